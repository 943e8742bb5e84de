namespace Silkwright.Web.Pictures;

/// <summary>A scale bar of a round length that fits.</summary>
/// <param name="LengthPx">Its length in the picture.</param>
/// <param name="Length">Its length in <see cref="Unit"/>.</param>
/// <param name="Unit">µm or mil.</param>
public sealed record ScaleBarGeometry(double LengthPx, double Length, string Unit)
{
    /// <param name="pxPerUnit">Picture units for one unit.</param>
    /// <param name="longestPx">The most room there is.</param>
    /// <param name="unit">The unit's sign.</param>
    public static ScaleBarGeometry Of(double pxPerUnit, double longestPx, string unit)
    {
        var most = longestPx / pxPerUnit;
        var power = Math.Pow(10, Math.Floor(Math.Log10(most)));
        var length = power * (most / power >= 5 ? 5 : most / power >= 2 ? 2 : 1);
        return new(length * pxPerUnit, length, unit);
    }
}
