using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Exposure;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>A shop as far as a plan needs to know it. Everything may be missing; the plan then says what it assumed.</summary>
public sealed record Shop
{
    public string Name { get; init; } = "A shop nobody described";

    public IReadOnlyList<MeshFabric> Meshes { get; init; } = [];

    public IReadOnlyList<Frame> Frames { get; init; } = [];

    public IReadOnlyList<Trough> Troughs { get; init; } = [];

    public IReadOnlyList<StencilEmulsion> Emulsions { get; init; } = [];

    public IReadOnlyList<Lamp> Lamps { get; init; } = [];

    public FilmDensity? Film { get; init; }

    public Room Room { get; init; } = new();

    /// <summary>What screens are wiped with on press; none: nobody said.</summary>
    public PressWash? PressWash { get; init; }

    public IReadOnlyList<ExposureReading> ExposureReadings { get; init; } = [];

    public IReadOnlyList<CoatReading> CoatReadings { get; init; } = [];

    /// <summary>What other shops' readings taught, where it was brought in.</summary>
    public CoatExperience? Experience { get; init; }

    /// <summary>Whether what its readings teach may be given to others.</summary>
    public bool SharesExperience { get; init; } = true;

    public IReadOnlyList<RunReading> RunReadings { get; init; } = [];

    public ShopPrices Prices { get; init; } = new();

    /// <summary>Minutes from a stencil's failure on press until a screen made anew prints. [min]</summary>
    public double? RemakeMinutes { get; init; }

    /// <summary>Minutes from a stencil's failure on press until a finished spare prints. [min]</summary>
    public double? SpareMinutes { get; init; }

    /// <summary>Screens made a day, all emulsions together. [1/d]</summary>
    public double? ScreensPerDay { get; init; }
}
