namespace Silkwright.Artwork;

/// <summary>Two films that hold the same image, or fit each other only when one is laid otherwise.</summary>
/// <param name="Turn">How the first would have to be laid to lie on the second.</param>
/// <param name="Ground">What tells it.</param>
/// <param name="AlikePercent">How much of the image is alike, or lies on the other's image; none where the marks tell. [%]</param>
public sealed record FilmResemblance(FilmTurn Turn, ResemblanceGround Ground, double? AlikePercent);
