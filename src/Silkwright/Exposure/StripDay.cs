namespace Silkwright.Exposure;

/// <summary>The strips of one day, put on the case's own footing: what they say of where the coat cured through and where the line closed that day.</summary>
internal sealed class StripDay
{
    private const double FinestNode = 0.1;
    private const double DaysPerYear = 365.25;
    private const int WedgeSteps = 21;

    /// <summary>How far one wash-out moves every reading of the day.</summary>
    private static readonly IReadOnlyList<(double At, double Share)> Hands = NormalNodes.Of(StripNoise.WashOutHand, FinestNode);

    private readonly IReadOnlyList<StepTest> strips;
    private readonly double toCaseLamp;
    private readonly double[] deeper;
    private readonly ChanceTable cure;
    private readonly ChanceTable? lines;
    private readonly ChanceTable? wedge;

    /// <param name="strips">Dry strips of one day.</param>
    /// <param name="exposure">What is asked about.</param>
    /// <param name="today">The day that it is asked about.</param>
    /// <param name="wall">What the finest wall asks beyond through-cure.</param>
    /// <param name="coat">How the needed exposure grows with the thickness.</param>
    internal StripDay(IReadOnlyList<StepTest> strips, ExposureCase exposure, DateOnly? today, double wall, CureLaw coat)
    {
        this.strips = strips;
        var years = today is { } now && strips[0].On is { } then ? Math.Max(0, now.DayNumber - then.DayNumber) / DaysPerYear : 0;
        var measured = strips.All(strip => strip.EomUm is not null);
        var day = measured ? StripNoise.DayOfMeasuredCoat : StripNoise.Day;
        Levels = NormalNodes.Of(Math.Sqrt((day * day) + (StripNoise.WanderInAYear * StripNoise.WanderInAYear * years)), FinestNode);
        toCaseLamp = exposure.Lamp.Hours is not null && strips[0].LampHours is { } hours && exposure.Lamp.Counts == ExposureCount.Seconds
            ? Math.Log(UsualExposure.Ageing(exposure.Lamp).Value / UsualExposure.Ageing(exposure.Lamp with { Hours = hours }).Value)
            : 0;
        var stencil = exposure.StencilUm.Value;
        deeper = [.. strips.Select(strip => strip.EomUm is { } eom ? coat.LogDose(Math.Max(0, stencil + eom - exposure.EomUm.Value)) - coat.LogDose(stencil) : 0)];
        var (least, most) = (Enumerable.Range(0, strips.Count).Min(Log), Enumerable.Range(0, strips.Count).Max(Log));
        cure = new ChanceTable(through => LogCure(through, wall, exposure.FinestGapUm), least, most);
        var line = WindowInputs.NeededLineUm(exposure);
        if (strips.Any(strip => strip.FinestLineUm is not null))
            lines = new ChanceTable(closes => LogLines(closes, line), least, most);
        if (strips.Any(strip => strip.SolidStep is not null))
            wedge = new ChanceTable(LogWedge, least, most);
    }

    /// <summary>How far the day may stand off the shop's level.</summary>
    internal IReadOnlyList<(double At, double Share)> Levels { get; }

    internal bool HasWedge => wedge is not null;

    /// <summary>Chance of the readings of the squeegee side and of walls, given the day's through-cure. [1 at the likeliest]</summary>
    internal double Cure(double through) => cure.At(through);

    /// <summary>Chance of the readings of lines, given the day's most. [1 at the likeliest]</summary>
    internal double Lines(double most) => lines?.At(most) ?? 1;

    /// <summary>Chance of the readings of the wedge, given the exposure that shows the usual solid step. [1 at the likeliest]</summary>
    internal double Wedge(double usual) => wedge?.At(usual) ?? 1;

    private double Log(int strip) => Math.Log(strips[strip].Amount) + toCaseLamp;

    private double LogCure(double through, double wall, double? neededGapUm)
    {
        var log = 0.0;
        for (var i = 0; i < strips.Count; i++)
        {
            var over = Log(i) - deeper[i] - through;
            if (strips[i].SqueegeeSideSoft is { } soft)
                log += LogChance(-over / StripNoise.SoftTurn, soft);
            if (strips[i].FinestGapUm is { } gap && neededGapUm is { } needed)
                log += LogChance((over - wall) / StripNoise.HeldTurn, gap <= needed);
        }

        return log;
    }

    private double LogLines(double most, double lineUm)
    {
        var log = 0.0;
        for (var i = 0; i < strips.Count; i++)
        {
            if (strips[i].FinestLineUm is { } line)
                log += LogChance((most - Log(i)) / StripNoise.HeldTurn, line <= lineUm);
        }

        return log;
    }

    private double LogWedge(double usual)
    {
        var perStep = Math.Log(StepWedge.FactorPerStep());
        return Math.Log(Hands.Sum(hand =>
        {
            var chance = hand.Share;
            for (var i = 0; i < strips.Count; i++)
            {
                if (strips[i].SolidStep is { } solid)
                    chance *= ReadingChance(solid, StepWedge.UsualSolidStep + ((Log(i) - usual - hand.At) / perStep));
            }

            return chance;
        }));
    }

    /// <summary>Chance that a whole step is read where the truth lies somewhere between; none is read below the first.</summary>
    private static double ReadingChance(int solid, double truth)
    {
        var upper = QuickNormal.Below((solid + 0.5 - truth) / StripNoise.ReadingSteps);
        var lower = solid == 0 ? 0 : QuickNormal.Below((solid - 0.5 - truth) / StripNoise.ReadingSteps);
        return (StripNoise.Slip / WedgeSteps) + ((1 - StripNoise.Slip) * (upper - lower));
    }

    private static double LogChance(double deviations, bool happened)
    {
        var chance = QuickNormal.Below(happened ? deviations : -deviations);
        return Math.Log(StripNoise.Slip + ((1 - (2 * StripNoise.Slip)) * chance));
    }
}
