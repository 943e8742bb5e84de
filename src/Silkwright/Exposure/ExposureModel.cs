using MathNet.Numerics.Distributions;
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
        var counts = CountsOf(exposure);
        var inputs = new WindowInputs(exposure, SpeedOf(exposure, strips, counts));
        var wall = inputs.Wall(inputs.Best);
        var prior = PriorOf(inputs);
        var belief = StripEvidence.Learn(prior, DaysOf(exposure, strips, wall));
        var grounds = WindowGrounds.Of(strips);

        var open = belief.Room > wall;
        var aim = open ? ExposureAim.Of(belief, wall, DayScatter.Of(inputs, SecondsAbout(counts, belief)), grounds.Least) : null;
        var aimOver = aim?.OverThrough ?? wall;
        var stops = (belief.Room - wall) / Math.Log(2);
        return new ExposureWindow
        {
            Counts = counts,
            Least = belief.Amount(wall, 0, grounds.Least),
            Most = belief.Amount(0, 1, grounds.Most),
            Aim = aim?.Amount,
            AimChancePercent = 100 * aim?.Chance,
            MiddleChancePercent = 100 * aim?.MiddleChance,
            AimBecause = aim?.Because,
            OpenChancePercent = 100 * Normal.CDF(wall, Math.Sqrt(belief.RoomVariance), belief.Room),
            LatitudeStops = stops,
            LatitudeSteps = stops * Math.Log10(2) / StepWedge.UsualDensityPerStep,
            FinestHeldUm = FinestHeld(inputs, aimOver, belief.Room - prior.Room, grounds.Most),
            RequiredFilmDensityUv = inputs.FilmDensity(aimOver),
            SolidStepAtAim = open ? SolidStep(aimOver) : null,
            Drivers = DriversOf(inputs, strips.Length > 0 ? belief : null, ExposureAim.IfKnown(wall, belief.Room)),
            OpensBy = open ? [] : WindowOpeners.For(exposure, belief.Room - prior.Room),
            Notes = [.. ExposureNotes.For(exposure, strips.Length, counts)],
        };
    }

    /// <summary>What amounts are told in: units of a machine need strips on it, be they damp.</summary>
    private static ExposureCount CountsOf(ExposureCase exposure) => exposure.Tests.Count > 0 ? exposure.Lamp.Counts : ExposureCount.Seconds;

    private static double? SecondsAbout(ExposureCount counts, LogBelief belief) => counts == ExposureCount.Seconds ? Math.Exp(belief.Through + (belief.Room / 2)) : null;

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
        var inputs = new WindowInputs(exposure, SpeedOf(exposure, strips, CountsOf(exposure)));
        return StripEvidence.Learn(PriorOf(inputs), DaysOf(exposure, strips, inputs.Wall(inputs.Best)), habit);
    }

    /// <summary>Strips of one day are one test; those without a date are one more, as new as the newest.</summary>
    internal static IReadOnlyList<StripDay> DaysOf(ExposureCase exposure, IReadOnlyList<StepTest> strips, double wall)
    {
        var coat = new CoatBleaching(exposure.Emulsion).Law;
        var today = exposure.On ?? strips.Max(strip => strip.On);
        return [.. strips
            .GroupBy(strip => strip.On)
            .OrderByDescending(day => day.Key ?? DateOnly.MaxValue)
            .Take(StripEvidence.MostDays)
            .Select(day => new StripDay([.. day], exposure, today, wall, coat))];
    }

    private static double SolidStep(double overThrough) =>
        StepWedge.UsualSolidStep
        + ((overThrough - Math.Log(CoatOptics.GoodOverLeast)) / Math.Log(StepWedge.FactorPerStep()));

    private static Estimate SpeedOf(ExposureCase exposure, StepTest[] strips, ExposureCount counts)
    {
        var seconds = UsualExposure.Seconds(exposure.Lamp.Kind, exposure.Emulsion);
        if (strips.Length == 0 && counts == ExposureCount.Seconds)
        {
            var spread = ImagingOptics.HasUsualExposure(exposure.Lamp.Imaging) ? UsualExposure.Spread : SpreadWithStrips;
            return CurveExposure.Seconds(
                Estimate.WithinFactor(seconds, spread, Ground.CommonPractice), spread, exposure.Lamp, exposure.Emulsion);
        }

        if (counts == ExposureCount.Seconds)
            return Estimate.WithinFactor(seconds, SpreadWithStrips, Ground.CommonPractice);

        // Place the prior so that its through-cure falls on the middle strip; damp ones say at least what somebody thought right.
        var middle = (strips.Length > 0 ? strips : exposure.Tests).Average(strip => Math.Log(strip.Amount));
        var alone = new WindowInputs(exposure, Estimate.Exact(1, Ground.CommonPractice));
        return Estimate.WithinFactor(Math.Exp(middle - alone.Through(alone.Best)), SpreadOfUnits, Ground.CommonPractice);
    }

    private static LogBelief PriorOf(WindowInputs inputs)
    {
        var ends = Propagation.ThroughAll(x => [inputs.Through(x), inputs.Room(x), inputs.Through(x) + inputs.Room(x)], inputs.Uncertain);
        var (through, room, most) = (ends[0].Estimate, ends[1].Estimate, LogBelief.Variance(ends[2].Estimate));
        var (ofThrough, ofRoom) = (LogBelief.Variance(through), LogBelief.Variance(room));
        return new LogBelief(through.Value, room.Value, ofThrough, ofRoom, (most - ofThrough - ofRoom) / 2);
    }

    private static Estimate FinestHeld(WindowInputs inputs, double overThrough, double learntRoom, Ground ground)
    {
        var over = overThrough - (inputs.FilmIsTheLimit ? 0 : learntRoom);
        var held = Propagation.Through(x => inputs.FinestHeldUm(x, over), inputs.Uncertain, floor: FinestToldUm).Estimate;
        return new Estimate(held.Value, held.Low, held.High, ground);
    }

    private static IReadOnlyList<Driver> DriversOf(WindowInputs inputs, LogBelief? learnt, (double Above, double RoomShare) known)
    {
        var (above, roomShare) = known;
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
