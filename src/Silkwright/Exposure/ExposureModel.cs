using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>The exposure window of one stencil.</summary>
/// <remarks>
/// From below: the light must cure through, behind a thread and in the finest wall. From above: edges grow until the finest line
/// closes, or the film's black leaks. Before any strip the figures are the trade's orders of magnitude; strips move and narrow
/// them. docs/engines/exposure.md.
/// </remarks>
public static class ExposureModel
{
    /// <summary>Even a wide window is aimed at no higher than this over its least. [1]: two wedge steps. Common practice.</summary>
    public const double AimAtMostOverLeast = 2;

    /// <summary>With strips, the usual exposures only say the order of magnitude: a factor either way. [1]</summary>
    private const double SpreadWithStrips = 10;

    /// <summary>Units mean nothing outside the machine, so the strips alone place the window. [1]</summary>
    private const double SpreadOfUnits = 30;

    /// <summary>No stencil is told to hold finer than this. [µm]. Common practice.</summary>
    private const double FinestToldUm = 20;

    /// <exception cref="ArgumentOutOfRangeException">A length, density, distance, amount or relative exposure out of its range.</exception>
    public static ExposureWindow Window(ExposureCase exposure)
    {
        ExposureChecks.Check(exposure);
        var strips = exposure.Tests.Where(strip => !strip.Damp).ToArray();
        var counts = strips.Length > 0 ? exposure.Lamp.Counts : ExposureCount.Seconds;
        var inputs = new WindowInputs(exposure, SpeedOf(exposure, strips, counts));
        var wall = inputs.Wall(inputs.Best);
        var prior = PriorOf(inputs);
        var belief = StripEvidence.Learn(prior, DaysOf(exposure, strips, wall));
        var grounds = WindowGrounds.Of(strips);

        var open = belief.Room > wall;
        var (aimAbove, aimShare) = AimIn(wall, belief.Room);
        var aimOver = open ? aimAbove + (aimShare * belief.Room) : wall;
        var stops = (belief.Room - wall) / Math.Log(2);
        return new ExposureWindow
        {
            Counts = counts,
            Least = belief.Amount(wall, 0, grounds.Least),
            Most = belief.Amount(0, 1, grounds.Most),
            Aim = open ? belief.Amount(aimAbove, aimShare, grounds.Least) : null,
            LatitudeStops = stops,
            LatitudeSteps = stops * Math.Log10(2) / StepWedge.UsualDensityPerStep,
            FinestHeldUm = FinestHeld(inputs, aimOver, belief.Room - prior.Room, grounds.Most),
            RequiredFilmDensityUv = inputs.FilmDensity(aimOver),
            SolidStepAtAim = open ? SolidStep(aimOver) : null,
            Drivers = DriversOf(inputs, strips.Length > 0 ? belief : null, aimAbove, aimShare),
            OpensBy = open ? [] : WindowOpeners.For(exposure, belief.Room - prior.Room),
            Notes = [.. ExposureNotes.For(exposure, strips.Length, counts)],
        };
    }

    /// <summary>The finest line to hold; where none is told, about the finest the mesh itself prints. [µm]</summary>
    public static double NeededLineUm(ExposureCase exposure) => WindowInputs.NeededLineUm(exposure);

    /// <summary>What is believed before a window is made of it.</summary>
    internal static LogBelief Believe(ExposureCase exposure) => Believe(exposure, StripNoise.WedgeHabit);

    /// <summary>What one day's strips say by themselves, to be held against other days of the same shop.</summary>
    internal static LogBelief BelieveDay(ExposureCase exposure) => Believe(exposure, habit: 0);

    private static LogBelief Believe(ExposureCase exposure, double habit)
    {
        ExposureChecks.Check(exposure);
        var strips = exposure.Tests.Where(strip => !strip.Damp).ToArray();
        var inputs = new WindowInputs(exposure, SpeedOf(exposure, strips, strips.Length > 0 ? exposure.Lamp.Counts : ExposureCount.Seconds));
        return StripEvidence.Learn(PriorOf(inputs), DaysOf(exposure, strips, inputs.Wall(inputs.Best)), habit);
    }

    /// <summary>Strips of one day are one test; those without a date are one more, as new as the newest.</summary>
    internal static IReadOnlyList<StripDay> DaysOf(ExposureCase exposure, IReadOnlyList<StepTest> strips, double wall)
    {
        var depth = CoatOptics.PenetrationUm(exposure.Emulsion).Value;
        var today = exposure.On ?? strips.Max(strip => strip.On);
        return [.. strips
            .GroupBy(strip => strip.On)
            .OrderByDescending(day => day.Key ?? DateOnly.MaxValue)
            .Take(StripEvidence.MostDays)
            .Select(day => new StripDay([.. day], exposure, today, wall, depth))];
    }

    /// <summary>Half way up the window in stops, but never more than two wedge steps over the least.</summary>
    internal static (double Above, double RoomShare) AimIn(double wall, double room)
    {
        var most = Math.Log(AimAtMostOverLeast);
        return (room - wall) / 2 > most ? (wall + most, 0) : (wall / 2, 0.5);
    }

    private static double SolidStep(double overThrough) =>
        StepWedge.UsualSolidStep
        + ((overThrough - Math.Log(CoatOptics.GoodOverLeast)) / Math.Log(StepWedge.FactorPerStep()));

    private static Estimate SpeedOf(ExposureCase exposure, StepTest[] strips, ExposureCount counts)
    {
        var seconds = UsualExposure.Seconds(exposure.Lamp.Kind, exposure.Emulsion);
        if (strips.Length == 0)
        {
            var spread = ImagingOptics.HasUsualExposure(exposure.Lamp.Imaging) ? UsualExposure.Spread : SpreadWithStrips;
            return CurveExposure.Seconds(
                Estimate.WithinFactor(seconds, spread, Ground.CommonPractice), spread, exposure.Lamp, exposure.Emulsion);
        }

        if (counts == ExposureCount.Seconds)
            return Estimate.WithinFactor(seconds, SpreadWithStrips, Ground.CommonPractice);

        // Place the prior so that its through-cure falls on the middle strip.
        var middle = strips.Select(strip => Math.Log(strip.Amount)).Average();
        var alone = new WindowInputs(exposure, Estimate.Exact(1, Ground.CommonPractice));
        return Estimate.WithinFactor(Math.Exp(middle - alone.Through(alone.Best)), SpreadOfUnits, Ground.CommonPractice);
    }

    private static LogBelief PriorOf(WindowInputs inputs)
    {
        var both = Propagation.ThroughAll(x => [inputs.Through(x), inputs.Room(x)], inputs.Uncertain);
        var (through, room) = (both[0].Estimate, both[1].Estimate);
        return new LogBelief(through.Value, room.Value, LogBelief.Variance(through), LogBelief.Variance(room), 0);
    }

    private static Estimate FinestHeld(WindowInputs inputs, double overThrough, double learntRoom, Ground ground)
    {
        var over = overThrough - (inputs.FilmIsTheLimit ? 0 : learntRoom);
        var held = Propagation.Through(x => inputs.FinestHeldUm(x, over), inputs.Uncertain, floor: FinestToldUm).Estimate;
        return new Estimate(held.Value, held.Low, held.High, ground);
    }

    private static IReadOnlyList<Driver> DriversOf(WindowInputs inputs, LogBelief? learnt, double above, double roomShare)
    {
        if (learnt is null)
            return Propagation.Through(x => inputs.Through(x) + above + (roomShare * inputs.Room(x)), inputs.Uncertain).Drivers;
        return Propagation.Through(
            x => x[0] + above + (roomShare * x[1]),
            [
                new("where the coat cures through, from the strips", Ends(learnt.Through, learnt.ThroughVariance)),
                new("how much more the detail stands, from the strips", Ends(learnt.Room, learnt.RoomVariance)),
            ]).Drivers;
    }

    private static Estimate Ends(double middle, double variance)
    {
        var reach = LogBelief.UsualReach * Math.Sqrt(variance);
        return new Estimate(middle, middle - reach, middle + reach, Ground.MeasuredHere);
    }
}
