namespace Silkwright.Coating;

/// <summary>The side of the mesh that a stroke is made on.</summary>
public enum StrokeSide
{
    /// <summary>The side that touches the garment.</summary>
    Print,

    /// <summary>The ink-well side.</summary>
    Squeegee,
}
