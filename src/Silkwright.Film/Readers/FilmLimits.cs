using Silkwright.Artwork;

namespace Silkwright.Film.Readers;

/// <summary>The largest and the coarsest film that is taken, and how far it is searched.</summary>
public static class FilmLimits
{
    /// <summary>Most pixels of a film. [px] 60 x 80 cm at 2400 dpi is 4.3 thousand million.</summary>
    public const long MostPixels = 4_500_000_000;

    /// <summary>Most memory and scratch that the image of a measured film may take. [byte] A full film of halftones and lettering takes some 13 MB for each thousand million pixels, one of fine noise 125.</summary>
    public const long MostKeptBytes = 250_000_000;

    /// <summary>Longest side of a film. [px] 50 in at 4000 dpi.</summary>
    public const int LongestSidePx = 200_000;

    /// <summary>Least resolution that can be a film. [1/in] A line of 100 µm is below one pixel at 254.</summary>
    public const double LeastDpi = 50;

    /// <summary>Most resolution. [1/in]</summary>
    public const double MostDpi = 20_000;

    /// <inheritdoc cref="FinestFeature.WidestUm"/>
    public const double WidestPartUm = FinestFeature.WidestUm;

    /// <inheritdoc cref="FinestFeature.WidestPx"/>
    public const int WidestPartPx = FinestFeature.WidestPx;

    /// <summary>Films that are measured at once, whoever asks; the others wait. More would only take memory from each other.</summary>
    public const int FilmsAtOnce = 2;

    /// <summary>Whether a film may have these sides. [px]</summary>
    public static bool Takes(double width, double height) =>
        width >= 1 && height >= 1 && width <= LongestSidePx && height <= LongestSidePx && width * height <= MostPixels;
}
