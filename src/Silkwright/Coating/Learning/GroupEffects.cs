using Silkwright.Statistics.Mixed;

namespace Silkwright.Coating.Learning;

/// <summary>What each group of coats lays more or less than its like: drawn towards none, and by its own readings alone.</summary>
/// <remarks>
/// By a group's own readings alone is the weighted mean of what they have left once every other effect is taken off; the mixed model's equations draw it towards none by
/// Σwc² / (Σwc² + 1/θ²), w the weights and c the columns (docs/engines/coating.md, equation 25).
/// </remarks>
internal static class GroupEffects
{
    public static IReadOnlyList<CoatEffect> Of(MixedFit fit, CoatLevels levels, IEnumerable<MixedRow> rows, double typicalUm)
    {
        double[][] effects = [.. CoatLevels.Terms.Select((_, t) => Enumerable.Range(0, levels.Count(t)).Select(level => fit.Effects(t, level)[0]).ToArray())];
        var told = CoatLevels.Terms.Select((_, t) => new (double Left, double Weight, int Rows)[levels.Count(t)]).ToArray();
        foreach (var row in rows)
        {
            var left = row.Response;
            for (var t = 0; t < effects.Length; t++)
                left -= row.Random[t].Columns[0] * effects[t][row.Random[t].Level];
            for (var t = 0; t < effects.Length; t++)
            {
                var (level, column) = (row.Random[t].Level, row.Random[t].Columns[0]);
                ref var sum = ref told[t][level];
                sum = (sum.Left + (row.Weight * column * left), sum.Weight + (row.Weight * column * column), sum.Rows + 1);
            }
        }

        return
        [
            .. from t in Enumerable.Range(0, CoatLevels.Terms.Length)
               where !CoatLevels.Terms[t].Known && t != CoatLevels.Screens
               from level in levels.Named(t)
               select EffectOf(t, level.Key, level.Level),
        ];

        CoatEffect EffectOf(int term, object key, int level)
        {
            var um = typicalUm * ShareOf(CoatLevels.Terms[term].Name);
            var (mean, variance) = fit.Expect([], [.. CoatLevels.Terms.Select((_, t) => ((int?)(t == term ? level : null), (IReadOnlyList<double>)[t == term ? um : 0]))]);
            var (left, weight, count) = told[term][level];
            return new CoatEffect(CoatLevels.Terms[term].Name, CoatLevels.NameOf(key), mean, Math.Sqrt(variance))
            {
                RawUm = weight > 0 ? um * (effects[term][level] + (left / weight)) : null,
                Readings = count,
            };
        }
    }

    private static double ShareOf(string term) => term switch
    {
        "shop" => CoatSpreads.Shop,
        "operator" => CoatSpreads.Operator,
        "trough" => CoatSpreads.Trough,
        "recipe" => CoatSpreads.Recipe,
        "emulsion" => CoatSpreads.Emulsion,
        _ => CoatSpreads.Mesh,
    };
}
