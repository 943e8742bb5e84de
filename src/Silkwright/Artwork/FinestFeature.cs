namespace Silkwright.Artwork;

/// <summary>The narrowest thing on a film and where it happens.</summary>
/// <param name="WidthUm">Width by the disc-opening definition. [µm]</param>
/// <param name="Places">Finest first, at most 200.</param>
public sealed record FinestFeature(double WidthUm, IReadOnlyList<FilmPlace> Places)
{
    /// <summary>Most places that are told; where there are as many, there may be more.</summary>
    public const int MostPlaces = 200;
}
