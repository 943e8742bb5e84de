namespace Silkwright.Statistics;

/// <summary>What values say of a level and of one jump at a place, both normal beforehand and summed out.</summary>
internal sealed class LevelEvidence(IReadOnlyList<double> values, IReadOnlyList<double> deviations, double levelDeviation, double shiftDeviation)
{
    public int Count => values.Count;

    /// <summary>The fit of a jump before the value at a place; at <see cref="Count"/> there is none.</summary>
    /// <returns>
    /// Weighted square that the fit leaves, half the logarithm of the determinant (what all places have in common left away), the jump and its variance.
    /// </returns>
    public (double Left, double HalfLog, double Shift, double Variance) At(int at)
    {
        double ll = 1 / (levelDeviation * levelDeviation), ss = 1 / (shiftDeviation * shiftDeviation), ls = 0, yl = 0, ys = 0, yy = 0;
        for (var i = 0; i < values.Count; i++)
        {
            var (y, precision) = (values[i] - values[0], 1 / (deviations[i] * deviations[i]));
            yy += precision * y * y;
            ll += precision;
            yl += precision * y;
            if (i < at)
                continue;
            ss += precision;
            ls += precision;
            ys += precision * y;
        }

        var determinant = (ll * ss) - (ls * ls);
        var shift = ((ll * ys) - (ls * yl)) / determinant;
        var level = ((ss * yl) - (ls * ys)) / determinant;
        return (yy - (yl * level) - (ys * shift), Math.Log(determinant * shiftDeviation * shiftDeviation) / 2, shift, ll / determinant);
    }
}
