using System.Runtime.CompilerServices;
using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Coating.Learning;

/// <summary>What the balance of volumes sees of a coat, told apart by reference: many readings share one mesh, emulsion, trough and strokes.</summary>
internal readonly record struct CoatShape(WovenMesh Mesh, StencilEmulsion Emulsion, Trough Trough, IReadOnlyList<Stroke> Strokes, bool EdgeIsKnown)
{
    public static CoatShape Of(CoatObservation coat) => new(coat.Mesh, coat.Emulsion, coat.Trough, coat.Strokes, coat.EdgeIsKnown);

    public bool Equals(CoatShape other) => ReferenceEquals(Mesh, other.Mesh) && ReferenceEquals(Emulsion, other.Emulsion) && ReferenceEquals(Trough, other.Trough)
        && ReferenceEquals(Strokes, other.Strokes) && EdgeIsKnown == other.EdgeIsKnown;

    public override int GetHashCode() => HashCode.Combine(
        RuntimeHelpers.GetHashCode(Mesh), RuntimeHelpers.GetHashCode(Emulsion), RuntimeHelpers.GetHashCode(Trough), RuntimeHelpers.GetHashCode(Strokes), EdgeIsKnown);
}
