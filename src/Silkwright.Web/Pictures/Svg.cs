using System.Globalization;

namespace Silkwright.Web.Pictures;

/// <summary>Numbers as SVG writes them.</summary>
public static class Svg
{
    /// <summary>A length or coordinate in picture units, to a hundredth.</summary>
    public static string Px(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A length in millimetres, to a tenth of a micrometre.</summary>
    public static string Exact(double mm) => mm.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A path through points, open.</summary>
    public static string Path(IEnumerable<(double X, double Y)> points) =>
        "M" + string.Join('L', points.Select(p => $"{Px(p.X)} {Px(p.Y)}"));

    /// <summary>The closed band between an upper and a lower line.</summary>
    public static string Band(IReadOnlyList<(double X, double Y)> upper, IReadOnlyList<(double X, double Y)> lower) =>
        Path(upper.Concat(lower.Reverse())) + "Z";
}
