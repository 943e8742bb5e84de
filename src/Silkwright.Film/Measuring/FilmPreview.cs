namespace Silkwright.Film.Measuring;

/// <summary>A small picture of a film.</summary>
public static class FilmPreview
{
    /// <summary>A PNG of the whole film, image black on white, no side longer than <paramref name="longestPx"/>.</summary>
    public static byte[] Png(string path, FilmOptions options, int longestPx, CancellationToken cancel) =>
        throw new NotImplementedException();

    /// <summary>A PNG of a square around a place at full resolution.</summary>
    /// <param name="path">The film.</param>
    /// <param name="options">What the file cannot say.</param>
    /// <param name="xMm">Centre from the left. [mm]</param>
    /// <param name="yMm">Centre from the top. [mm]</param>
    /// <param name="sideMm">Side of the square. [mm]</param>
    /// <param name="cancel">Stops the work.</param>
    public static byte[] DetailPng(string path, FilmOptions options, double xMm, double yMm, double sideMm, CancellationToken cancel) =>
        throw new NotImplementedException();
}
