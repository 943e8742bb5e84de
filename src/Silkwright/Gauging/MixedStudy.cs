using Silkwright.Statistics.Mixed;

namespace Silkwright.Gauging;

/// <summary>A study as a linear mixed model: any number of readings of each part by each operator.</summary>
internal static class MixedStudy
{
    /// <summary>The variances by restricted maximum likelihood.</summary>
    public static VarianceParts Of(StudyLayout layout, CancellationToken cancel)
    {
        double[] values = [.. layout.Readings.Select(reading => reading.ValueUm)];
        var terms = new List<RandomTerm>();
        var part = Add("part", layout.PartOf, layout.Parts.Count, layout.Parts.Count > 1);
        var hand = Add("operator", layout.OperatorOf, layout.Operators.Count, layout.Operators.Count > 1);
        var cell = Add("interaction", layout.CellOf, layout.CellCounts.Length, layout.Parts.Count > 1 && layout.Operators.Count > 1 && layout.HasRepeats);
        var mean = values.Average();
        var fit = MixedFit.Of(new MixedModel { Response = [.. values.Select(value => value - mean)], Fixed = [[.. Enumerable.Repeat(1.0, values.Length)]], Random = terms }, cancel);
        return new VarianceParts(fit.ResidualVariance, Of(hand), Of(cell), Of(part));

        int? Add(string name, int[] levels, int count, bool there)
        {
            if (!there)
                return null;
            terms.Add(RandomTerm.Height(name, levels, count));
            return terms.Count - 1;
        }

        double Of(int? term) => term is { } t ? fit.Covariance(t, 0, 0) : 0;
    }
}
