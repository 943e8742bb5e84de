namespace Silkwright.Bench;

/// <summary>What is on a film of full size.</summary>
internal enum FullSizeArt
{
    /// <summary>Halftones, lines and lettering.</summary>
    Mixed,

    /// <summary>The same, and fine dashes on every inch.</summary>
    Dashed,

    /// <summary>One halftone of 65 lpi from edge to edge: the most dots that a film has.</summary>
    Halftone,
}
