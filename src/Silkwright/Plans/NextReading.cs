using Silkwright.Choosing;
using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>Finds the one measurement that would narrow a job's plan most.</summary>
internal static class NextReading
{
    /// <summary>
    /// Beside ln(high / low) of the number it narrows: how directly one reading narrows it. A run's end teaches one
    /// impression count; a step test or a gauge reading teaches the number itself. Our own judgement.
    /// </summary>
    private const double WholeEffect = 1;
    private const double PartEffect = 0.4;

    public static MeasureNext? Of(IReadOnlyList<StencilCandidate> chosen)
    {
        var readings = chosen.SelectMany(candidate => new (MeasureNext Next, double Worth)[]
        {
            (new($"Expose a step test of {candidate.Emulsion.Id} on the {Clause.WithoutArticle(candidate.Lamp.Id)}, dry, with the wedge and the finest lines on the film.", "the exposure window", 25),
                WholeEffect * Width(candidate.Exposure.Aim ?? candidate.Exposure.Least)),
            (new($"Read the stencil thickness of the {Clause.WithoutArticle(candidate.Emulsion.Id)} coat at five points, and the bare mesh beside it.", "the stencil's thickness and, with it, the exposure and the edge", 3),
                WholeEffect * Width(candidate.Coat.EomUm)),
            (new($"Write down the impressions of each {Clause.WithoutArticle(candidate.Emulsion.Id)} screen when it fails or comes off sound.", "the print life and the spares", 1),
                PartEffect * Width(candidate.Life.MedianImpressions)),
            (new("Hang a hygrometer at screen height where the coats dry, and weigh a screen until it stays the same.", "the drying time", 10),
                PartEffect * (candidate.Drying.MinutesToSafe is { } safe ? Width(safe) : 0)),
        }).ToArray();
        return readings.Length == 0 ? null : readings.MaxBy(reading => reading.Worth).Next;
    }

    /// <summary>ln(high / low), with a floor so that an interval down to nothing counts as wide and not as endless.</summary>
    private static double Width(Estimate estimate)
    {
        const double widest = 3;
        return estimate.High <= 0 ? 0 : estimate.Low <= 0 ? widest : Math.Min(widest, Math.Log(estimate.High / estimate.Low));
    }
}
