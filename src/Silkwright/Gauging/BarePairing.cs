namespace Silkwright.Gauging;

/// <summary>Emulsion over mesh of one screen from readings before and after coating.</summary>
/// <param name="EomUm">Coated less bare. [µm]</param>
/// <param name="StandardErrorUm">Of that mean. [µm]; none where nothing was read twice.</param>
/// <param name="Freedom">Degrees of freedom of the standard error (Satterthwaite where means are paired).</param>
/// <param name="Pairs">Places paired; 0 where means are.</param>
public sealed record BarePairing(double EomUm, double? StandardErrorUm, double Freedom, int Pairs)
{
    /// <summary>Pairs by place where two places or more were read both ways, the screen's means otherwise.</summary>
    /// <param name="bare">Place and thickness of the bare mesh. [µm]; at least one.</param>
    /// <param name="coated">The same of the coated mesh; at least one.</param>
    /// <remarks>
    /// By place: the mean of differences and its standard error, so that what the mesh itself varies by drops out (any text on paired comparisons). By means: variances add,
    /// degrees of freedom after B. L. Welch, Biometrika 34 (1947) 28.
    /// </remarks>
    public static BarePairing Of(IReadOnlyList<(string? Place, double Um)> bare, IReadOnlyList<(string? Place, double Um)> coated)
    {
        if (bare.Count == 0 || coated.Count == 0)
            throw new ArgumentException("A pair needs a bare and a coated reading.");
        var before = bare.Where(reading => reading.Place is not null).ToLookup(reading => reading.Place!, reading => reading.Um);
        double[] differences = [.. coated.Where(reading => reading.Place is not null && before.Contains(reading.Place)).GroupBy(reading => reading.Place!)
            .Select(place => place.Average(reading => reading.Um) - before[place.Key].Average())];
        if (differences.Length > 1)
            return new BarePairing(differences.Average(), Math.Sqrt(Variance(differences) / differences.Length), differences.Length - 1, differences.Length);
        double[] b = [.. bare.Select(reading => reading.Um)], c = [.. coated.Select(reading => reading.Um)];
        var eom = c.Average() - b.Average();
        if (b.Length < 2 || c.Length < 2)
            return new BarePairing(eom, null, 0, 0);
        var (vb, vc) = (Variance(b) / b.Length, Variance(c) / c.Length);
        var freedom = vb + vc > 0 ? (vb + vc) * (vb + vc) / ((vb * vb / (b.Length - 1)) + (vc * vc / (c.Length - 1))) : b.Length + c.Length - 2;
        return new BarePairing(eom, Math.Sqrt(vb + vc), freedom, 0);
    }

    private static double Variance(double[] values)
    {
        var mean = values.Average();
        return values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1);
    }
}
