namespace Silkwright.Exposure;

/// <summary>Doses, the depths they cured, and the working curve through them by two ways of fitting.</summary>
/// <param name="DosesMjPerCm2">[mJ/cm²]</param>
/// <param name="DepthsUm">Cured depth of each. [µm]</param>
/// <param name="Least">Least squares.</param>
/// <param name="Robust">Without what went wrong.</param>
public sealed record DepthFit(IReadOnlyList<double> DosesMjPerCm2, IReadOnlyList<double> DepthsUm, WorkingCurveFit Least, WorkingCurveFit Robust)
{
    /// <summary>A pair that counts less than this is called wild. [1]</summary>
    private const double WildWeight = 0.1;
    private const int PointsTold = 25;

    /// <summary>The curve is told so far beyond the outermost doses. [1]</summary>
    private const double Beyond = 1.3;

    /// <exception cref="ArgumentException">Too few pairs, or depths that do not grow with dose.</exception>
    public static DepthFit Of(IReadOnlyList<double> dosesMjPerCm2, IReadOnlyList<double> depthsUm) =>
        new(dosesMjPerCm2, depthsUm, WorkingCurveFit.Of(dosesMjPerCm2, depthsUm), WorkingCurveFit.Robust(dosesMjPerCm2, depthsUm));

    /// <summary>The pair lies off the line that the others make.</summary>
    /// <param name="pair">From 0.</param>
    public bool IsWild(int pair) => Robust.Weights[pair] < WildWeight;

    /// <summary>The robust curve over the doses that were given.</summary>
    public IReadOnlyList<CurePoint> Points
    {
        get
        {
            var (from, to) = (DosesMjPerCm2.Min() / Beyond, DosesMjPerCm2.Max() * Beyond);
            return [.. Enumerable.Range(0, PointsTold).Select(i => from * Math.Pow(to / from, (double)i / (PointsTold - 1))).Select(dose => new CurePoint(dose, Robust.DepthUm(dose)))];
        }
    }
}
