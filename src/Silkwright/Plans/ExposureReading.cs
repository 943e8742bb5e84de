using Silkwright.Exposure;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>A step test that the shop has made.</summary>
public sealed record ExposureReading
{
    public required string EmulsionId { get; init; }

    public MeshFabric? Mesh { get; init; }

    public string? LampId { get; init; }

    public required StepTest Test { get; init; }
}
