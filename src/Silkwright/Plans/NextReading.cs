using Silkwright.Choosing;
using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>Finds the one measurement that narrows a job's plan most by the minute: docs/engines/plans.md, "The next measurement".</summary>
internal static class NextReading
{
    /// <summary>
    /// How much of the width of the number it tells of one measurement takes away, where no engine reckons it: a step test tells the number itself; dry weight and air
    /// one of several things that drying hangs on; a run's end one impression count, and not before the screen has ended. Our own judgement.
    /// </summary>
    private const double WholeEffect = 1;
    private const double PartEffect = 0.4;
    private const double LaterEffect = 0.04;

    /// <summary>Thinner coats count as this. [µm] The least an even stencil has, as in docs/engines/coating.md.</summary>
    private const double LeastUm = 4;

    private const double StepTestMinutes = 25, DryingMinutes = 15, RunMinutes = 1;

    /// <param name="planned">Each colour's chosen emulsion with its coat.</param>
    /// <param name="learnt">What was read so far of any coat.</param>
    public static MeasureNext? Of(IReadOnlyList<PlannedCoat> planned, CoatHierarchy learnt)
    {
        MeasureNext[] weighed =
        [
            .. Coats(planned, learnt),
            .. planned.GroupBy(one => (one.Chosen.Emulsion.Id, one.Chosen.Lamp.Id)).Select(alike => StepTest([.. alike.Select(one => one.Chosen)])),
            .. planned.GroupBy(one => one.Chosen.Emulsion.Id).Select(alike => Run([.. alike.Select(one => one.Chosen)])),
            .. planned.Count == 0 ? [] : new[] { Drying([.. planned.Select(one => one.Chosen)]) },
        ];
        MeasureNext[] ordered = [.. weighed.OrderByDescending(one => one.NarrowsPerMinute)];
        return ordered.Length == 0 ? null : ordered[0] with { Others = ordered[1..] };
    }

    /// <summary>Each coat of the job, read once: what the hierarchy expects of the intervals of all its coats then.</summary>
    private static IEnumerable<MeasureNext> Coats(IReadOnlyList<PlannedCoat> planned, CoatHierarchy learnt)
    {
        CoatObservation[] coats = [.. planned.Select(one => one.Coat)];
        foreach (var worth in NextCoatReading.Of(learnt, coats).DistinctBy(worth => NameOf(coats[worth.Case])))
        {
            var (before, after) = worth.Narrowed[worth.Case];
            var others = Enumerable.Range(0, coats.Length).Count(i => NameOf(coats[i]) != NameOf(coats[worth.Case]) && worth.Narrowed[i].BeforeUm > 1.01 * worth.Narrowed[i].AfterUm);
            yield return new MeasureNext(
                $"Read the stencil thickness of the {Clause.WithoutArticle(coats[worth.Case].Emulsion.Id)} coat on {coats[worth.Case].Mesh.Fabric.Name} at five points, and the bare mesh beside it.",
                "the stencil's thickness and, with it, the exposure and the edge", NextCoatReading.UsualMinutes)
            {
                Narrows = Enumerable.Range(0, coats.Length).Sum(i => 2 * (worth.Narrowed[i].BeforeUm - worth.Narrowed[i].AfterUm) / Math.Max(LeastUm, planned[i].Chosen.Coat.EomUm.Value)),
                Because = $"It brings this coat from ±{Figures.Plain(before)} to ±{Figures.Plain(after)} µm{(others == 0 ? "" : others == 1 ? " and narrows another coat of the job" : $" and narrows {others} other coats of the job")}.",
            };
        }
    }

    private static MeasureNext StepTest(StencilCandidate[] alike) => new(
        $"Expose a step test of {alike[0].Emulsion.Id} on the {Clause.WithoutArticle(alike[0].Lamp.Id)}, dry, with the wedge and the finest lines on the film.", "the exposure window", StepTestMinutes)
    {
        Narrows = WholeEffect * alike.Sum(one => Width(one.Exposure.Aim ?? one.Exposure.Least)),
        Because = $"It tells the exposure itself{OfColours(alike.Length)}.",
    };

    private static MeasureNext Run(StencilCandidate[] alike) => new(
        $"Write down the impressions of each {Clause.WithoutArticle(alike[0].Emulsion.Id)} screen when it fails or comes off sound.", "the print life and the spares", RunMinutes)
    {
        Narrows = LaterEffect * alike.Sum(one => Width(one.Life.MedianImpressions)),
        Because = "It tells one run's end, and not before the screen has come off.",
    };

    private static MeasureNext Drying(StencilCandidate[] all) => new(
        "Hang a hygrometer at screen height where the coats dry, and weigh a screen until it stays the same.", "the drying time", DryingMinutes)
    {
        Narrows = PartEffect * all.Sum(one => one.Drying.MinutesToSafe is { } safe ? Width(safe) : 0),
        Because = "It tells the air, and when one coat was dry; warmth and draught differ from day to day.",
    };

    private static string OfColours(int count) => count == 1 ? "" : $" of {count} colours";

    private static string NameOf(CoatObservation coat) => $"{coat.Emulsion.Id}\n{coat.Mesh.Fabric.Name}\n{coat.Trough.Id}\n{string.Join(',', coat.Strokes)}";

    /// <summary>An interval's width as a share of its value, up to three of it: past that a number is not known, and how little matters no more.</summary>
    private static double Width(Estimate estimate)
    {
        const double widest = 3;
        return estimate.Value <= 0 ? 0 : Math.Min(widest, (estimate.High - estimate.Low) / estimate.Value);
    }
}
