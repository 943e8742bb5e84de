namespace Silkwright.Exposure;

/// <summary>What the strips of one day say, read in one way: chances over the logarithm of exposure.</summary>
internal sealed class StripReadings
{
    private const double FinestNode = 0.1;
    private const int WedgeSteps = 21;
    private const double LeastKept = 1e-200;

    private readonly IReadOnlyList<StepTest> strips;
    private readonly IReadOnlyList<double> logs;
    private readonly IReadOnlyList<double> deeper;
    private readonly ReadingWay way;
    private readonly IReadOnlyList<(double At, double Share)> hands;
    private readonly ChanceTable cure;
    private readonly ChanceTable? lines;
    private readonly ChanceTable? wedge;

    /// <param name="strips">Dry strips of one day.</param>
    /// <param name="logs">What each was given, on the case's lamp.</param>
    /// <param name="deeper">What each strip's own coat asks beyond the case's.</param>
    /// <param name="exposure">What is asked about.</param>
    /// <param name="wall">What the finest wall asks beyond through-cure.</param>
    /// <param name="way">How they were read.</param>
    internal StripReadings(IReadOnlyList<StepTest> strips, IReadOnlyList<double> logs, IReadOnlyList<double> deeper, ExposureCase exposure, double wall, ReadingWay way)
    {
        (this.strips, this.logs, this.deeper, this.way) = (strips, logs, deeper, way);
        hands = NormalNodes.Of(way.Hand, FinestNode);
        var (least, most) = (logs.Min(), logs.Max());
        cure = new ChanceTable(through => LogCure(through, wall, exposure.FinestGapUm), least, most);
        var line = WindowInputs.NeededLineUm(exposure);
        if (strips.Any(strip => strip.FinestLineUm is not null))
            lines = new ChanceTable(closes => LogLines(closes, line), least, most);
        if (strips.Any(strip => strip.SolidStep is not null))
            wedge = new ChanceTable(LogWedge, least, most);
    }

    /// <summary>Logarithm of the chance of all of them where each is likeliest: what this way is worth beside another.</summary>
    internal double LogGreatest => cure.LogGreatest + (lines?.LogGreatest ?? 0) + (wedge?.LogGreatest ?? 0);

    /// <summary>Chance of the readings of the squeegee side and of walls, given the day's through-cure. [1 at the likeliest]</summary>
    internal double Cure(double through) => cure.At(through);

    /// <summary>Chance of the readings of lines, given the day's most. [1 at the likeliest]</summary>
    internal double Lines(double most) => lines?.At(most) ?? 1;

    /// <summary>Chance of the readings of the wedge, given the exposure that shows the usual solid step. [1 at the likeliest]</summary>
    internal double Wedge(double usual) => wedge?.At(usual) ?? 1;

    private double LogCure(double through, double wall, double? neededGapUm)
    {
        var log = 0.0;
        for (var i = 0; i < strips.Count; i++)
        {
            var over = logs[i] - deeper[i] - through;
            if (strips[i].SqueegeeSideSoft is { } soft)
                log += LogChance(-over / StripNoise.SoftTurn, soft, way.SideSlip);
            if (strips[i].FinestGapUm is { } gap && neededGapUm is { } needed)
                log += LogChance((over - wall) / StripNoise.HeldTurn, gap <= needed, way.DetailSlip);
        }

        return log;
    }

    private double LogLines(double most, double lineUm)
    {
        var log = 0.0;
        for (var i = 0; i < strips.Count; i++)
        {
            if (strips[i].FinestLineUm is { } line)
                log += LogChance((most - logs[i]) / StripNoise.HeldTurn, line <= lineUm, way.DetailSlip);
        }

        return log;
    }

    private double LogWedge(double usual)
    {
        Span<double> byHand = stackalloc double[hands.Count];
        var greatest = double.NegativeInfinity;
        for (var hand = 0; hand < hands.Count; hand++)
        {
            byHand[hand] = LogWedge(hands[hand].Share, usual + hands[hand].At);
            greatest = Math.Max(greatest, byHand[hand]);
        }

        var sum = 0.0;
        foreach (var log in byHand)
            sum += Math.Exp(log - greatest);
        return greatest + Math.Log(sum);
    }

    /// <summary>With one hand, of that share.</summary>
    private double LogWedge(double share, double usual)
    {
        var perStep = Math.Log(StepWedge.FactorPerStep());
        var (log, chance) = (0.0, share);
        for (var i = 0; i < strips.Count; i++)
        {
            if (strips[i].SolidStep is not { } solid)
                continue;
            chance *= ReadingChance(solid, StepWedge.UsualSolidStep + ((logs[i] - usual) / perStep));
            // Before many strips' chances multiplied are no number any more.
            if (chance < LeastKept)
                (log, chance) = (log + Math.Log(chance), 1);
        }

        return log + Math.Log(chance);
    }

    /// <summary>Chance that a whole step is read where the truth lies somewhere between; none is read below the first.</summary>
    private double ReadingChance(int solid, double truth)
    {
        var upper = QuickNormal.Below((solid + 0.5 - truth) / StripNoise.ReadingSteps);
        var lower = solid == 0 ? 0 : QuickNormal.Below((solid - 0.5 - truth) / StripNoise.ReadingSteps);
        return (way.WedgeSlip / WedgeSteps) + ((1 - way.WedgeSlip) * (upper - lower));
    }

    private static double LogChance(double deviations, bool happened, double slip)
    {
        var chance = QuickNormal.Below(happened ? deviations : -deviations);
        return Math.Log(slip + ((1 - (2 * slip)) * chance));
    }
}
