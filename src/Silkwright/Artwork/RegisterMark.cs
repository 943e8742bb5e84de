namespace Silkwright.Artwork;

/// <summary>A cross or target near a film's edge, by which the films of a job are laid over each other.</summary>
/// <param name="XMm">Middle from the film's left edge. [mm]</param>
/// <param name="YMm">Middle from the film's top edge. [mm]</param>
/// <param name="SizeMm">Longer side of what encloses it. [mm]</param>
public sealed record RegisterMark(double XMm, double YMm, double SizeMm);
