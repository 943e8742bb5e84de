using Silkwright.Mesh;

namespace Silkwright.Moire;

/// <summary>A halftone on a mesh, and the garment's knit under it where that is known.</summary>
public sealed record MoireCase
{
    /// <summary>From eye to print at the nearest: a garment on the next person. Common practice, no source. [mm]</summary>
    public const double UsualViewingMm = 500;

    public required MeshFabric Mesh { get; init; }

    /// <summary>The threads against the film's horizontal, counter-clockwise. [degrees]</summary>
    public double MeshAngleDegrees { get; init; }

    /// <summary>Halftone ruling. [1/cm]</summary>
    public required double RulingPerCm { get; init; }

    /// <summary>Halftone angle from the film's horizontal, counter-clockwise. [degrees]</summary>
    public required double AngleDegrees { get; init; }

    /// <summary>One tone; where none is named, every beat is told at the tone where it is strongest. [%]</summary>
    public double? TonePercent { get; init; }

    /// <summary>Rows of stitches down the garment. [1/cm]; given with <see cref="KnitWalesPerCm"/> or not at all.</summary>
    public double? KnitCoursesPerCm { get; init; }

    /// <summary>Columns of stitches across the garment. [1/cm]</summary>
    public double? KnitWalesPerCm { get; init; }

    /// <summary>From eye to print at the nearest; it is looked at from across a room as well. [mm]</summary>
    public double ViewingMm { get; init; } = UsualViewingMm;

    /// <summary>Threads of the mesh to a line of the halftone. [1]</summary>
    public double ThreadsPerLine => Mesh.CountPerCm / RulingPerCm;
}
