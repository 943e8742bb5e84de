using Silkwright.Choosing;
using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Drying;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Life;
using Silkwright.Stock;

namespace Silkwright.Plans;

/// <summary>Carries one emulsion through coat, drying, exposure, life and cost for one colour.</summary>
internal static class CandidateTrial
{
    /// <summary>How long somebody stands at a machine that counts units of its own. Common practice, no source. [s]</summary>
    private const double UsualExposureSeconds = 60;

    /// <summary>Screens hang no longer than over night before somebody takes them. Common practice, no source. [min]</summary>
    private const double MostDryingMinutes = 960;

    private static readonly Estimate OverNight = Estimate.Within(MostDryingMinutes, 0.2, Ground.CommonPractice);

    /// <summary>The coat and the exposure of an emulsion for this colour.</summary>
    public static ExposedCoat CoatAndExpose(StencilEmulsion emulsion, ColourBrief brief)
    {
        var (trough, coat) = Coat(emulsion, brief);
        var (lamp, window, lampBecause) = Expose(emulsion, coat, brief);
        return new ExposedCoat(emulsion, trough, coat, lamp, lampBecause, window);
    }

    /// <summary>No lamp of the shop gives light the emulsion answers to; one that a step test has shown to harden it does, whatever its sheet says.</summary>
    public static HardLimit? NoLamp(StencilEmulsion emulsion, ColourBrief brief) =>
        brief.Shop.Lamps.Any(lamp => HasHardened(emulsion, lamp, brief)) ? null : HardLimits.NoLamp(emulsion, brief.Shop.Lamps);

    private static bool HasHardened(StencilEmulsion emulsion, Lamp lamp, ColourBrief brief) => brief.Shop.ExposureReadings.Any(reading =>
        Same(reading.EmulsionId, emulsion.Id)
        && reading.Test is { Damp: false, SolidStep: > 0 }
        && (reading.LampId is null ? brief.Shop.Lamps.Count == 1 : Same(reading.LampId, lamp.Id)));

    /// <summary>The emulsion with the finish that serves this colour at the least expected cost.</summary>
    public static StencilCandidate Of(ExposedCoat exposed, ColourBrief brief)
    {
        var (emulsion, trough, coat, lamp, lampBecause, window) = exposed;
        var drying = Dry(emulsion, coat, brief);
        StencilCandidate[] finished = [.. FinishesFor(brief.Colour.Ink, emulsion).Select(Finished)];
        return finished.MinBy(candidate => candidate.Cost.Total.Value)! with
        {
            Finishes =
            [
                .. finished.Select(one => new FinishOption(
                    one.Finish, one.Cost, one.Life.FinishPercent, one.Spares.Spares, Reclaims.MeshLost(emulsion, one.Finish))),
            ],
        };

        StencilCandidate Finished(StencilFinish finish)
        {
            var resistance = Resistance.To(brief.Colour.Ink, emulsion);
            var wellCured = CureChance.WellCured(window.LatitudeStops);
            var stencil = ShopLives.CaseOf(emulsion, brief.Colour.Ink, finish, brief.Shop.PressWash, coat.EomUm, brief.Impressions) with { WellCured = wellCured };
            var life = StencilLife.Of(stencil with { Learnt = brief.Lives.For(emulsion.Id, stencil) });
            var work = WorkTimes.Of(
                coat, emulsion.Family == EmulsionFamily.CapillaryFilm, FamilyValues.NeedsSensitiser(emulsion.Liquid().Family), SecondsOf(window), finish)
                with { Reclaim = Reclaims.Minutes(emulsion, finish) };
            var lot = PotLife.Of(emulsion, brief.On);
            var (cost, spares) = Price(emulsion, coat, drying, life, work, finish, wellCured, brief);
            return new StencilCandidate
            {
                Emulsion = emulsion,
                Resistance = resistance,
                Lot = lot,
                Trough = trough,
                Coat = coat,
                Drying = drying,
                Lamp = lamp,
                LampBecause = lampBecause,
                Exposure = window,
                Finish = finish,
                Life = life,
                Spares = spares,
                MinutesPerScreen = work.Total,
                Cost = cost,
            };
        }
    }

    /// <summary>Emulsion over mesh that the colour wants. [µm]</summary>
    public static double WantedEomUm(ColourBrief brief) =>
        brief.WantedEomUm ?? CoatTarget.EomUm(brief.Mesh.Mesh, brief.Colour.Ink, brief.Underbase, brief.Halftone);

    /// <summary>A hardener is for inks with water in them, and for coats that take one: elsewhere it spoils the screen for nothing.</summary>
    private static StencilFinish[] FinishesFor(InkKind ink, StencilEmulsion emulsion) =>
        ShopLives.HasWater(ink) && emulsion.Hardening != Hardening.None && emulsion.Liquid().Hardening != Hardening.None
            ? [StencilFinish.None, StencilFinish.PostExposed, StencilFinish.Hardened]
            : [StencilFinish.None, StencilFinish.PostExposed];

    private static (Trough Trough, CoatPrediction Coat) Coat(StencilEmulsion emulsion, ColourBrief brief)
    {
        var wanted = WantedEomUm(brief);
        return brief.Shop.Troughs
            .Select(trough => (Trough: trough, Coat: LearntCoat.For(wanted, ShopCoats.Asked(brief.Shop, trough, emulsion, brief.Mesh.Mesh), brief.Coats)))
            .OrderBy(choice => Math.Abs(choice.Coat.EomUm.Value - wanted) + choice.Coat.Strokes.Count)
            .First();
    }

    private static DryingResult Dry(StencilEmulsion emulsion, CoatPrediction coat, ColourBrief brief)
    {
        var room = brief.Shop.Room;
        return DryingTime.Of(new DryingCase
        {
            AirCelsius = room.Celsius!.Value,
            HumidityPercent = room.HumidityPercent!.Value,
            AirSpeedMPerS = room.AirSpeedMPerS,
            AltitudeM = room.AltitudeM ?? 0,
            WetUm = coat.WetUm,
            SolidsPercent = coat.SolidsPercent,
            Family = emulsion.Family,
            HumidityResistant = (emulsion.HumidityResistant ?? false) && (emulsion.Liquid().HumidityResistant ?? false),
        });
    }

    /// <summary>The lamp with tests of this emulsion on it; without any, the one that leaves the widest window.</summary>
    private static (Lamp Lamp, ExposureWindow Window, string? Because) Expose(StencilEmulsion emulsion, CoatPrediction coat, ColourBrief brief)
    {
        var mesh = brief.Mesh.Mesh;
        var fabric = mesh.Fabric;
        var lamps = brief.Shop.Lamps
            .Select(lamp => (Lamp: lamp, Tests: TestsOn(lamp)))
            .Select(choice => (choice.Lamp, choice.Tests, Window: ExposureModel.Window(new ExposureCase
            {
                Mesh = fabric,
                EomUm = coat.EomUm,
                StencilUm = coat.StencilUm,
                Emulsion = emulsion,
                Lamp = choice.Lamp,
                Film = brief.Shop.Film,
                FinestLineUm = Asked(brief.Needs.FinestLineUm, mesh.SmallestLineUm, brief.Needs.SmallestDotUm, mesh.SmallestDotUm),
                FinestGapUm = Asked(brief.Needs.FinestGapUm, mesh.SmallestLineUm, brief.Needs.SmallestHoleUm, mesh.SmallestDotUm),
                Tests = choice.Tests,
                On = brief.On,
            })))
            .OrderBy(choice => LampSpectrum.Misses(choice.Lamp, emulsion) && !HasHardened(emulsion, choice.Lamp, brief))
            .ThenByDescending(choice => choice.Tests.Any(test => !test.Damp))
            .ThenByDescending(choice => choice.Window.LatitudeStops)
            .ToArray();
        return (lamps[0].Lamp, lamps[0].Window, Because());

        string? Because()
        {
            if (lamps is not [var taken, var next, ..])
                return null;
            var test = $"step test of {emulsion.Id} on {fabric.Name}";
            var (wide, narrow) = (Figures.Plain(taken.Window.LatitudeStops), Figures.Plain(next.Window.LatitudeStops));
            var wider = $"{wide} stops against {narrow} on {next.Lamp.Id}";
            return (taken.Window.IsMeasured, next.Window.IsMeasured) switch
            {
                (true, false) => $"Exposed with {taken.Lamp.Id}: a {test} was made there and not on {next.Lamp.Id}.",
                (true, true) when wide == narrow => $"Exposed with {taken.Lamp.Id}: it has a {test}, and so has {next.Lamp.Id}, with as wide a window, {narrow} stops.",
                (true, true) => $"Exposed with {taken.Lamp.Id}: of the lamps with a {test} it leaves the widest window, {wider}.",
                _ when wide == narrow => $"Exposed with {taken.Lamp.Id}: no lamp has a {test} yet, and {next.Lamp.Id} leaves as wide a window, {narrow} stops.",
                _ => $"Exposed with {taken.Lamp.Id}: no lamp has a {test} yet, and this one leaves the widest window, {wider}.",
            };
        }

        StepTest[] TestsOn(Lamp lamp) => [.. brief.Shop.ExposureReadings
            .Where(reading => Same(reading.EmulsionId, emulsion.Id))
            .Where(reading => reading.LampId is null ? brief.Shop.Lamps.Count == 1 : Same(reading.LampId, lamp.Id))
            .Where(reading => reading.Mesh is null || (reading.Mesh.Name == fabric.Name && reading.Mesh.Dyed == fabric.Dyed))
            .Select(reading => reading.Test)];
    }

    /// <summary>Detail finer than the mesh holds is lost to the mesh; the exposure is asked to hold what the mesh can.</summary>
    private static double? Asked(Estimate? line, Estimate heldLine, Estimate? dot, Estimate heldDot)
    {
        double?[] asked =
        [
            line is null ? null : Math.Max(line.Value, heldLine.Value),
            dot is null ? null : Math.Max(dot.Value, heldDot.Value),
        ];
        return asked.Min();
    }

    private static (ScreenCost Cost, SparesAdvice Spares) Price(
        StencilEmulsion emulsion,
        CoatPrediction coat,
        DryingResult drying,
        LifeResult life,
        ScreenWork work,
        StencilFinish finish,
        double wellCured,
        ColourBrief brief)
    {
        var prices = brief.Shop.Prices;
        var coatedM2 = (brief.Frame is { } frame
            ? Estimate.Within(frame.InsideWidthMm * frame.InsideHeightMm / 100, 0.15, Ground.Model)
            : WorkTimes.CoatedCm2).Times(1e-4);
        var grams = Propagation.Through(x => x[0] * x[1], [new("coat", coat.GramsPerM2), new("area", coatedM2)]).Estimate;
        var rate = prices.LabourPerHour is { } own ? Estimate.Within(own, WorkTimes.OwnLabourSpread, Ground.MeasuredHere) : WorkTimes.LabourPerHour;
        var stopPerMinute = prices.PressStopPerMinute is { } stop ? Estimate.Within(stop, 0.1, Ground.MeasuredHere) : WorkTimes.StopPerMinute;
        var screensPerDay = brief.Shop.ScreensPerDay is { } pace ? Estimate.Within(pace, 0.2, Ground.MeasuredHere) : WorkTimes.ScreensPerDay;
        var liquid = emulsion.Liquid();
        var remakeMinutes = brief.Shop.RemakeMinutes is { } remake ? Estimate.Within(remake, 0.3, Ground.MeasuredHere) : WorkTimes.RemakeMinutes;
        var spareMinutes = brief.Shop.SpareMinutes is { } spare ? Estimate.Within(spare, 0.3, Ground.MeasuredHere) : WorkTimes.SpareMinutes;
        var cost = new CostCase
        {
            Screens = 1,
            GramsPerScreen = grams,
            PricePerKg = FamilyValues.PricePerKg(liquid),
            FilmPerScreen = FilmOf(emulsion, coatedM2),
            Work = work,
            DryingPlacePerScreen = DryingPlace(coat, drying),
            LabourPerHour = rate,
            WastePercent = Waste.SharePercent(new WasteCase(
                liquid.Family,
                liquid.Price?.Grams ?? ContainerPrice.UsualGrams,
                PotLife.LifeDays(liquid),
                Propagation.Through(x => x[0] * x[1], [new("pace", screensPerDay), new("emulsion on a screen", grams)]).Estimate)),
            ExpectedFailures = life.ExpectedFailures,
            RemakeChance = RemakeChance(wellCured, drying),
            StopForRemake = StopCost(remakeMinutes),
            StopForSpare = StopCost(spareMinutes),
            FinishPerScreen = finish == StencilFinish.Hardened ? WorkTimes.HardenerPerScreen : Estimate.Exact(0, Ground.Model),
            ReclaimPerScreen = Reclaims.MeshLost(emulsion, finish) ? WorkTimes.MeshLost : WorkTimes.RemoverPerScreen,
        };
        var one = CostModel.Of(cost);
        var making = one.EmulsionOnScreen.Value + one.Labour.Value + one.Waste.Value;
        var spares = Spares.Advise(life, new SpareCosts(
            making, making, stopPerMinute.Value, remakeMinutes.Value, spareMinutes.Value));
        return (spares.Spares == 0 ? one : CostModel.Of(cost with { Screens = 1 + spares.Spares }), spares);

        Estimate StopCost(Estimate stopMinutes) =>
            Propagation.Through(x => x[0] * x[1], [new("stop", stopMinutes), new("cost of a stop", stopPerMinute)]).Estimate;
    }

    /// <summary>The film under a film laid with emulsion; one laid with water is itself what is on the screen. [currency/screen]</summary>
    private static Estimate FilmOf(StencilEmulsion emulsion, Estimate coatedM2) => emulsion.LaidWith is null
        ? Estimate.Exact(0, Ground.Model)
        : Propagation.Through(
            x => x[0] * x[1], [new("price of the film", FamilyValues.FilmPricePerM2(emulsion)), new("area", coatedM2)]).Estimate;

    /// <summary>The coat takes its place once for each drying; where it never gets safe, until the next morning.</summary>
    private static Estimate DryingPlace(CoatPrediction coat, DryingResult drying)
    {
        var dryings = 1 + coat.Strokes.Count(stroke => stroke.AfterDrying);
        return Propagation.Through(
            x => dryings * Math.Min(x[0], MostDryingMinutes) / 60 * x[1],
            [new("drying time", drying.MinutesToSafe ?? OverNight), new("place to dry", WorkTimes.DryingPlacePerHour)],
            floor: 0).Estimate;
    }

    private static Estimate RemakeChance(double wellCured, DryingResult drying) =>
        drying.StickRiskPercent.Map(percent => 1 - (wellCured * (1 - (percent / 100))));

    private static double SecondsOf(ExposureWindow window) =>
        window.Counts == ExposureCount.Seconds ? (window.Aim ?? window.Least).Value : UsualExposureSeconds;

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
