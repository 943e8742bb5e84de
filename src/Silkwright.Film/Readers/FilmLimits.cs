namespace Silkwright.Film.Readers;

/// <summary>The largest and the coarsest film that is taken, and how far it is searched.</summary>
public static class FilmLimits
{
    /// <summary>Most pixels of a film. [px] 60 x 80 cm at 2400 dpi is 4.3 thousand million.</summary>
    public const long MostPixels = 4_500_000_000;

    /// <summary>Most memory that the image of a measured film may take. [byte] A full film of halftones and lettering takes some 20 MB for each thousand million pixels, one of fine noise 125.</summary>
    public const long MostKeptBytes = 250_000_000;

    /// <summary>Longest side of a film. [px] 50 in at 4000 dpi.</summary>
    public const int LongestSidePx = 200_000;

    /// <summary>Least resolution that can be a film. [1/in] A line of 100 µm is below one pixel at 254.</summary>
    public const double LeastDpi = 50;

    /// <summary>Most resolution. [1/in]</summary>
    public const double MostDpi = 20_000;

    /// <summary>
    /// Widest part of image or gap that is looked for. [µm] Where a measurement has no finest image or gap, nothing outside the halftones
    /// is narrower than this or than <see cref="WidestPartPx"/>. Common practice: no mesh or stencil is chosen by a wider part.
    /// </summary>
    public const double WidestPartUm = 2000;

    /// <summary>Widest part that is looked for on a fine grid. [px] Above 3200 dpi it is narrower than <see cref="WidestPartUm"/>.</summary>
    public const int WidestPartPx = 254;

    /// <summary>Films that are measured at once, whoever asks; the others wait. More would only take memory from each other.</summary>
    public const int FilmsAtOnce = 2;

    /// <summary>Whether a film may have these sides. [px]</summary>
    public static bool Takes(double width, double height) =>
        width >= 1 && height >= 1 && width <= LongestSidePx && height <= LongestSidePx && width * height <= MostPixels;

    /// <summary>The widest part that is looked for at a resolution. [µm]</summary>
    /// <param name="dpi">[1/in]</param>
    public static double WidestLookedForUm(double dpi) => Math.Min(WidestPartUm, WidestPartPx * 25400 / dpi);
}
