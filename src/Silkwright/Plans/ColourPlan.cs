using Silkwright.Artwork;
using Silkwright.Choosing;
using Silkwright.Coating;
using Silkwright.Drying;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Ink;
using Silkwright.Life;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>The stencil plan of one colour.</summary>
public sealed record ColourPlan
{
    public required JobColour Colour { get; init; }

    public required ArtworkNeeds Needs { get; init; }

    /// <summary>The frame to use; none where the shop named none.</summary>
    public Frame? Frame { get; init; }

    /// <summary>The mesh and its geometry.</summary>
    public required WovenMesh Mesh { get; init; }

    /// <summary>Whether this mesh holds this artwork.</summary>
    public required DetailVerdict Detail { get; init; }

    /// <summary>How its halftone beats with this mesh; none without a halftone.</summary>
    public MoireVerdict? Moire { get; init; }

    /// <summary>The recommended emulsion; none when no emulsion of the shop may be used.</summary>
    public StencilEmulsion? Emulsion { get; init; }

    /// <summary>With no emulsion: the nearest way out.</summary>
    public string? NearestFix { get; init; }

    /// <summary>The stations below are absent when there is no emulsion.</summary>
    public CoatPrediction? Coat { get; init; }

    /// <summary>The trough to coat with.</summary>
    public Trough? Trough { get; init; }

    public DryingResult? Drying { get; init; }

    public ExposureWindow? Exposure { get; init; }

    /// <summary>The lamp to expose with.</summary>
    public Lamp? Lamp { get; init; }

    public StencilFinish Finish { get; init; }

    /// <summary>Every finish weighed for this stencil, with its price.</summary>
    public IReadOnlyList<FinishOption> Finishes { get; init; } = [];

    public InkResult? Ink { get; init; }

    public LifeResult? Life { get; init; }

    public SparesAdvice? Spares { get; init; }

    /// <summary>Expected cost of this colour's screens over the run, part by part.</summary>
    public ScreenCost? Cost { get; init; }

    /// <summary>Cautions in the order of the work.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>Why this mesh and this emulsion.</summary>
    public required IReadOnlyList<string> Because { get; init; }

    /// <summary>Every emulsion that lost and why, nearest first; the ruled-out last.</summary>
    public required IReadOnlyList<Beaten> Beaten { get; init; }

    public required IReadOnlyList<Note> Notes { get; init; }
}
