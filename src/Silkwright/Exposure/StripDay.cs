namespace Silkwright.Exposure;

/// <summary>The strips of one day, put on the case's own footing: what they say of where the coat cured through and where the line closed that day.</summary>
internal sealed class StripDay
{
    private const double FinestNode = 0.1;
    private const double DaysPerYear = 365.25;

    /// <param name="strips">Dry strips of one day.</param>
    /// <param name="exposure">What is asked about.</param>
    /// <param name="today">The day that it is asked about.</param>
    /// <param name="wall">What the finest wall asks beyond through-cure.</param>
    /// <param name="coat">How the needed exposure grows with the thickness.</param>
    internal StripDay(IReadOnlyList<StepTest> strips, ExposureCase exposure, DateOnly? today, double wall, CureLaw coat)
    {
        var contradicted = StripContradictions.AreIn(strips, exposure);
        var years = today is { } now && strips[0].On is { } then ? Math.Max(0, now.DayNumber - then.DayNumber) / DaysPerYear : 0;
        var measured = strips.All(strip => strip.EomUm is not null);
        var day = contradicted ? StripNoise.DayOfContradictions : measured ? StripNoise.DayOfMeasuredCoat : StripNoise.Day;
        Levels = NormalNodes.Of(Math.Sqrt((day * day) + (StripNoise.WanderInAYear * StripNoise.WanderInAYear * years)), FinestNode);
        var toCaseLamp = exposure.Lamp.Hours is not null && strips[0].LampHours is { } hours && exposure.Lamp.Counts == ExposureCount.Seconds
            ? Math.Log(UsualExposure.Ageing(exposure.Lamp).Value / UsualExposure.Ageing(exposure.Lamp with { Hours = hours }).Value)
            : 0;
        var stencil = exposure.StencilUm.Value;
        double[] deeper = [.. strips.Select(strip => strip.EomUm is { } eom ? coat.LogDose(Math.Max(0, stencil + eom - exposure.EomUm.Value)) - coat.LogDose(stencil) : 0)];
        double[] logs = [.. strips.Select(strip => Math.Log(strip.Amount) + toCaseLamp)];
        List<(StripReadings Readings, double Log)> ways = [.. ReadingWay.Of(contradicted).Select(way => Read(way, _ => true)).Select(read => (read, read.LogGreatest))];
        if (contradicted && WeakTail.Of(strips) is { } tail)
        {
            // Those from there on may have been damp: they teach nothing but that they agree with each other.
            var dry = Read(ReadingWay.Usual, strip => strip.Amount < tail.From);
            ways.Add((dry, dry.LogGreatest + Read(ReadingWay.Usual, strip => strip.Amount >= tail.From).LogGreatest));
        }

        var greatest = ways.Max(way => way.Log);
        Ways = [.. ways.Select(way => (way.Readings, Math.Exp(way.Log - greatest)))];
        HasWedge = strips.Any(strip => strip.SolidStep is not null);

        StripReadings Read(ReadingWay way, Func<StepTest, bool> isRead)
        {
            int[] which = [.. Enumerable.Range(0, strips.Count).Where(i => isRead(strips[i]))];
            return new([.. which.Select(i => strips[i])], [.. which.Select(i => logs[i])], [.. which.Select(i => deeper[i])], exposure, wall, way);
        }
    }

    /// <summary>How far the day may stand off the shop's level.</summary>
    internal IReadOnlyList<(double At, double Share)> Levels { get; }

    /// <summary>How the strips may have been read, with what each way is worth beside the likeliest: one where they agree.</summary>
    internal IReadOnlyList<(StripReadings Readings, double Worth)> Ways { get; }

    internal bool HasWedge { get; }
}
