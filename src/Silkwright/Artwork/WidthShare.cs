namespace Silkwright.Artwork;

/// <summary>How much of the image is no wider than a width.</summary>
/// <param name="UpToUm">Width. [µm]</param>
/// <param name="AreaPercent">Share of the image area whose local width is at most that. [%]</param>
public sealed record WidthShare(double UpToUm, double AreaPercent);
