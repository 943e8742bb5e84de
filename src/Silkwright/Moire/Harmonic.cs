namespace Silkwright.Moire;

/// <summary>One overtone of a lattice.</summary>
/// <param name="Orders">Which one.</param>
/// <param name="Vector">Its frequency and direction.</param>
/// <param name="Strength">Size of its Fourier coefficient as a share of the lattice's own scale: see <see cref="Lattice"/>. [1]</param>
public readonly record struct Harmonic(OrderPair Orders, GratingVector Vector, double Strength);
