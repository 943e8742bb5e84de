namespace Silkwright.Artwork;

/// <summary>The narrowest thing on a film and where it happens.</summary>
/// <param name="WidthUm">Width by the disc-opening definition. [µm]</param>
/// <param name="Places">Finest first, at most 200.</param>
public sealed record FinestFeature(double WidthUm, IReadOnlyList<FilmPlace> Places)
{
    /// <summary>Most places that are told; where there are as many, there may be more.</summary>
    public const int MostPlaces = 200;

    /// <summary>Widest part of image or gap that is looked for. [µm] Common practice: no mesh or stencil is chosen by a wider part.</summary>
    public const double WidestUm = 2000;

    /// <summary>Widest part that is looked for on a fine grid. [px] Above 3200 dpi it is narrower than <see cref="WidestUm"/>.</summary>
    public const int WidestPx = 254;
}
