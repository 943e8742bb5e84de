namespace Silkwright.Film.Readers;

/// <summary>The largest and the coarsest film that is taken.</summary>
public static class FilmLimits
{
    /// <summary>Most pixels of a film. [px] 30 x 40 in at 1200 dpi is 1.7 thousand million; packed, this limit is 250 MB.</summary>
    public const long MostPixels = 2_000_000_000;

    /// <summary>Longest side of a film. [px] 50 in at 4000 dpi.</summary>
    public const int LongestSidePx = 200_000;

    /// <summary>Least resolution that can be a film. [1/in] A line of 100 µm is below one pixel at 254.</summary>
    public const double LeastDpi = 50;

    /// <summary>Most resolution. [1/in]</summary>
    public const double MostDpi = 20_000;
}
