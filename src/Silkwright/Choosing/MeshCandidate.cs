using Silkwright.Mesh;

namespace Silkwright.Choosing;

/// <summary>A mesh held against an artwork.</summary>
/// <param name="Mesh">The mesh and its geometry.</param>
/// <param name="Holds">It holds the finest line and the smallest dot.</param>
/// <param name="Shortfall">ln of how much too coarse it is for the worst detail that some mesh holds; 0 when it holds that. [1]</param>
/// <param name="DepositMiss">|ln| of its ink volume over the volume wanted. [1]</param>
/// <param name="ThreadsPerLine">Mesh count over halftone ruling; none without halftone. [1]</param>
/// <param name="Reason">In one sentence.</param>
public sealed record MeshCandidate(
    WovenMesh Mesh, bool Holds, double Shortfall, double DepositMiss, double? ThreadsPerLine, string Reason);
