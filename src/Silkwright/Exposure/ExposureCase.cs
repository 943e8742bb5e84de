using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Exposure;

/// <summary>Everything an exposure window is computed from.</summary>
public sealed record ExposureCase
{
    public required MeshFabric Mesh { get; init; }

    /// <summary>Dry emulsion over mesh on the print side. [µm]</summary>
    public required Estimate EomUm { get; init; }

    /// <summary>Mesh and emulsion over mesh together. [µm]</summary>
    public required Estimate StencilUm { get; init; }

    public required StencilEmulsion Emulsion { get; init; }

    public required Lamp Lamp { get; init; }

    /// <summary>UV densities; common practice stands in where they were not measured.</summary>
    public FilmDensity? Film { get; init; }

    /// <summary>Narrowest printed line: an opening in the stencil that must not close. [µm]</summary>
    public double? FinestLineUm { get; init; }

    /// <summary>Narrowest gap: a wall of stencil that must stand. [µm]</summary>
    public double? FinestGapUm { get; init; }

    /// <summary>Strips already exposed with this lamp, emulsion and kind of mesh.</summary>
    public IReadOnlyList<StepTest> Tests { get; init; } = [];

    /// <summary>The day it is asked for: tests count less the older they are. None: the day of the latest test.</summary>
    public DateOnly? On { get; init; }
}
