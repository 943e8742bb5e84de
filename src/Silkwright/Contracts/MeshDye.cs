namespace Silkwright.Contracts;

/// <summary>Colour of a mesh, as far as light minds.</summary>
public enum MeshDye
{
    White,
    Dyed,
}
