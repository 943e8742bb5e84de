using MathNet.Numerics.Distributions;

namespace Silkwright.Exposure;

/// <summary>Lets step-test strips correct what is believed of a window.</summary>
/// <remarks>
/// Bayes' rule on a grid over the logarithms of through-cure and room: docs/engines/exposure.md, equation 13. A solid step says
/// where through-cure lies; a soft squeegee side or a lost wall that it lies higher; a held line that the most lies higher.
/// </remarks>
internal static class StripEvidence
{
    private const int GridHalf = 40;
    private const double GridReach = 4.5;

    /// <summary>Reading one strip's solid step, half a step or so; common practice. [log exposure]</summary>
    private const double StepReading = 0.28;

    /// <summary>What all strips share: the hand at the wash-out, half a step; common practice. [log exposure]</summary>
    private const double StepShared = 0.2;

    /// <summary>How sharply soft turns to hard, and held to lost. [log exposure]; common practice.</summary>
    private const double SoftTurn = 0.15;
    private const double HeldTurn = 0.2;

    internal static LogBelief Learn(LogBelief prior, IReadOnlyList<StepTest> strips, double lineUm, double? gapUm, double wall)
    {
        if (strips.Count == 0)
            return prior;
        var throughStep = GridReach * Math.Sqrt(prior.ThroughVariance) / GridHalf;
        var roomStep = GridReach * Math.Sqrt(prior.RoomVariance) / GridHalf;
        var grid = new List<(double Through, double Room, double Log)>();
        for (var i = -GridHalf; i <= GridHalf; i++)
        {
            var through = i * throughStep;
            var logThrough = LogPrior(i) + LogOfCure(prior.Through + through, strips, gapUm, wall);
            for (var j = -GridHalf; j <= GridHalf; j++)
            {
                var room = j * roomStep;
                var log = logThrough + LogPrior(j) + LogOfLines(prior.Through + through + prior.Room + room, strips, lineUm);
                grid.Add((through, room, log));
            }
        }

        return Moments(prior, grid);
    }

    private static LogBelief Moments(LogBelief prior, List<(double Through, double Room, double Log)> grid)
    {
        double sum = 0, through = 0, room = 0, throughSquare = 0, roomSquare = 0, product = 0;
        var greatest = grid.Max(point => point.Log);
        foreach (var point in grid)
        {
            var weight = Math.Exp(point.Log - greatest);
            sum += weight;
            through += weight * point.Through;
            room += weight * point.Room;
            throughSquare += weight * point.Through * point.Through;
            roomSquare += weight * point.Room * point.Room;
            product += weight * point.Through * point.Room;
        }

        through /= sum;
        room /= sum;
        return new LogBelief(
            prior.Through + through,
            prior.Room + room,
            (throughSquare / sum) - (through * through),
            (roomSquare / sum) - (room * room),
            (product / sum) - (through * room));
    }

    private static double LogPrior(int step)
    {
        var deviations = step * GridReach / GridHalf;
        return -deviations * deviations / 2;
    }

    private static double LogOfCure(double through, IReadOnlyList<StepTest> strips, double? gapUm, double wall)
    {
        var log = LogOfSteps(through, strips);
        foreach (var strip in strips)
        {
            var amount = Math.Log(strip.Amount);
            if (strip.SqueegeeSideSoft is { } soft)
                log += LogChance((through - amount) / SoftTurn, soft);
            if (strip.FinestGapUm is { } gap && gapUm is { } needed)
                log += LogChance((amount - through - wall) / HeldTurn, gap <= needed);
        }

        return log;
    }

    private static double LogOfLines(double most, IReadOnlyList<StepTest> strips, double lineUm)
    {
        var log = 0.0;
        foreach (var strip in strips)
        {
            if (strip.FinestLineUm is { } line)
                log += LogChance((most - Math.Log(strip.Amount)) / HeldTurn, line <= lineUm);
        }

        return log;
    }

    private static double LogOfSteps(double through, IReadOnlyList<StepTest> strips)
    {
        var readings = strips
            .Where(strip => strip.SolidStep is not null)
            .Select(strip => Math.Log(
                StepWedge.CorrectedAmount(strip.Amount, strip.SolidStep!.Value, StepWedge.UsualSolidStep) / CoatOptics.GoodOverLeast))
            .ToArray();
        if (readings.Length == 0)
            return 0;
        var variance = (StepShared * StepShared) + (StepReading * StepReading / readings.Length);
        var off = readings.Average() - through;
        return -off * off / (2 * variance);
    }

    private static double LogChance(double deviations, bool happened)
    {
        var chance = Normal.CDF(0, 1, happened ? deviations : -deviations);
        return Math.Log(Math.Max(chance, LeastChance));
    }

    /// <summary>A reading may always be a slip. [1]. Common practice.</summary>
    private const double LeastChance = 0.01;
}
