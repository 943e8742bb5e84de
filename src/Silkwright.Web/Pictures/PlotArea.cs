namespace Silkwright.Web.Pictures;

/// <summary>Where values fall in a picture.</summary>
/// <param name="Left">Left edge in the picture.</param>
/// <param name="Top">Upper edge.</param>
/// <param name="Width">Width in the picture.</param>
/// <param name="Height">Height in the picture.</param>
/// <param name="XFrom">Value at the left edge.</param>
/// <param name="XTo">Value at the right edge.</param>
/// <param name="YFrom">Value at the lower edge.</param>
/// <param name="YTo">Value at the upper edge.</param>
/// <param name="LogX">The horizontal scale is logarithmic; both ends above 0.</param>
public sealed record PlotArea(
    double Left, double Top, double Width, double Height, double XFrom, double XTo, double YFrom, double YTo, bool LogX = false)
{
    public double Right => Left + Width;

    public double Bottom => Top + Height;

    public double X(double value) => Left + (Width * Math.Clamp(Part(value), 0, 1));

    public double Y(double value) => Bottom - (Height * Math.Clamp((value - YFrom) / (YTo - YFrom), 0, 1));

    /// <summary>The value at a share of the width, 0 to 1.</summary>
    public double XAt(double share) => LogX ? XFrom * Math.Pow(XTo / XFrom, share) : XFrom + ((XTo - XFrom) * share);

    private double Part(double value) => LogX
        ? Math.Log(Math.Max(value, XFrom) / XFrom) / Math.Log(XTo / XFrom)
        : (value - XFrom) / (XTo - XFrom);
}
