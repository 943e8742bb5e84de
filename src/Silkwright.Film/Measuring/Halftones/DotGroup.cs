namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Dots on one lattice.</summary>
/// <param name="Lattice">Where they stand; the origin is one of them.</param>
/// <param name="Members">Numbers of the dots.</param>
internal sealed record DotGroup(ScreenLattice Lattice, int[] Members);
