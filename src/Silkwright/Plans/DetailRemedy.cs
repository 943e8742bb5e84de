using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>What would make artwork and mesh meet, each figure computed from this mesh or this artwork.</summary>
public sealed record DetailRemedy
{
    /// <summary>A mesh of this shop that holds everything, though no frame carries the film on it.</summary>
    public MeshFabric? Mesh { get; init; }

    /// <summary>Where no mesh of the shop does: the least count that could. [1/cm]</summary>
    public double? LeastCountPerCm { get; init; }

    /// <summary>And the thickest thread it may have. [µm]</summary>
    public double? ThickestThreadUm { get; init; }

    /// <summary>What finer lines would have to be thickened to for the mesh taken. [µm]</summary>
    public Estimate? ThickenToUm { get; init; }

    /// <summary>Places lost if the artwork stays as it is.</summary>
    public int PlacesLost { get; init; }

    /// <summary>The film told no more places than these.</summary>
    public bool MayBeMore { get; init; }

    /// <summary>The finest ruling that the mesh taken carries without moiré being next to certain. [1/in]</summary>
    public double? FinestRulingLpi { get; init; }

    /// <summary>The lightest tone whose dots the mesh taken holds. [%]</summary>
    public double? LightestTonePercent { get; init; }

    /// <summary>The ways out in sentences.</summary>
    public string Sentence => string.Join(" ", Art().Concat(Meshes()));

    private IEnumerable<string> Art()
    {
        if (ThickenToUm is { } um)
            yield return $"Thicken what is finer to {Figures.Length(Figures.Up(um))}{(PlacesLost == 0 ? "" : $", or accept losing {PlacesLost} {(PlacesLost == 1 ? "place" : "places")}{(MayBeMore ? " or more" : "")}")}.";
        if (FinestRulingLpi is { } lpi)
            yield return $"Rule the halftone at {Figures.Plain(Math.Floor(lpi), 0)} lines per inch or coarser.";
        if (LightestTonePercent is { } percent)
            yield return $"Lift the lightest tone to {Figures.Plain(Math.Ceiling(percent), 0)} %, or accept losing what is lighter.";
    }

    private IEnumerable<string> Meshes()
    {
        if (Mesh is { } mesh)
            yield return $"{mesh.Name} would hold it; no frame here carries the film on it.";
        else if (LeastCountPerCm is { } count)
            yield return $"No mesh of this shop holds it; one of {Figures.Plain(Math.Ceiling(count), 0)}/cm or finer with a thread of {Figures.Plain(Math.Floor(ThickestThreadUm!.Value), 0)} µm or thinner would.";
        else
            yield return "No mesh of this shop holds it.";
    }
}
