using Silkwright.Mesh;

namespace Silkwright.Moire;

/// <summary>An angle, a ruling or a mesh, and what it would beat like.</summary>
/// <param name="Asked">The case with that angle, ruling or mesh.</param>
/// <param name="Pattern">Its plainest beat with every figure as named; none where none is seen.</param>
/// <param name="VisibilityAtWorst">How plain the plainest may become within the doubts about mesh and film. [1], 0 to 1.</param>
public sealed record MoireChoice(MoireCase Asked, MoirePattern? Pattern, double VisibilityAtWorst)
{
    public double AngleDegrees => Asked.AngleDegrees;

    public double RulingPerCm => Asked.RulingPerCm;

    public MeshFabric Mesh => Asked.Mesh;
}
