using Silkwright.Exposure;

namespace Silkwright.Web.Pictures;

/// <summary>Where cured depths fall over the logarithm of dose.</summary>
/// <param name="Curve">The curve, dose by dose.</param>
/// <param name="Measured">Pairs that were measured; wild ones are not in the curve. None: nothing was.</param>
/// <param name="Area">Of the picture.</param>
public sealed record CureCurveGeometry(IReadOnlyList<CurePoint> Curve, IReadOnlyList<(double DoseMjPerCm2, double DepthUm, bool IsWild)> Measured, PlotArea Area)
{
    /// <summary>Room above the deepest. [1]</summary>
    private const double Beyond = 1.08;

    /// <summary>No stencil is as thick; deeper is drawn only where it is asked about. [µm]</summary>
    private const double DeepestUm = 250;

    /// <summary>So many times the depth asked about is drawn. [1]</summary>
    private const double Around = 3;

    public static CureCurveGeometry Of(IReadOnlyList<CurePoint> curve, DepthFit? fit, double? askedDepthUm, double left, double top, double width, double height)
    {
        (double DoseMjPerCm2, double DepthUm, bool IsWild)[] measured = fit is null ? [] : [.. fit.DepthsUm.Select((depth, i) => (fit.DosesMjPerCm2[i], depth, fit.IsWild(i)))];
        if (fit is null)
            curve = [.. curve.TakeWhile((point, i) => i < 3 || point.DepthUm.Value <= (askedDepthUm is { } asked ? Around * asked : DeepestUm))];
        var deepest = Math.Max(curve.Max(point => point.DepthUm.Value) * 1.3, Math.Max(askedDepthUm ?? 0, measured.Select(pair => pair.DepthUm).DefaultIfEmpty(0).Max()));
        return new(curve, measured, new PlotArea(left, top, width, height, curve[0].DoseMjPerCm2, curve[^1].DoseMjPerCm2, 0, Math.Max(1, Beyond * deepest), LogX: true));
    }

    public IReadOnlyList<(double X, double Y)> Line(Func<CurePoint, double> depthUm) => [.. Curve.Select(point => (Area.X(point.DoseMjPerCm2), Area.Y(depthUm(point))))];
}
