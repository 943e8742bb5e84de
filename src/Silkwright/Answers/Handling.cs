using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Life;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>What an emulsion asks of the room and the hands.</summary>
/// <param name="Emulsion">Which.</param>
/// <param name="RoomLightMinutes">How long a coated screen may lie in the room's light; none where the light is not known. [min]</param>
/// <param name="Forgiveness">How its exposure forgives.</param>
/// <param name="Finish">What is done to the developed stencil.</param>
public sealed record Handling(string Emulsion, Estimate? RoomLightMinutes, Forgiveness Forgiveness, StencilFinish Finish)
{
    /// <summary>The emulsion a capillary film is laid with; none where it is laid with water, or is no film.</summary>
    public string? LaidWith { get; init; }

    /// <summary>Every finish weighed, with its price.</summary>
    public IReadOnlyList<FinishOption> Finishes { get; init; } = [];

    /// <summary>Its coat shows the mark below, for jobs lined up by eye; none where nobody said.</summary>
    public bool? SeeThrough { get; init; }
}
