namespace Silkwright.Moire;

/// <summary>Which overtone of a lattice: so many times its one direction, so many times the other.</summary>
/// <param name="First">Along the lattice's angle; of a knit, the wales.</param>
/// <param name="Second">Square to it; of a knit, the courses.</param>
public readonly record struct OrderPair(int First, int Second);
