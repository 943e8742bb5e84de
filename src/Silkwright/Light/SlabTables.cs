using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>A slab's layers as tables of sixteen entries: what lies above at 0, the layers from 1, what lies below after them.</summary>
internal sealed class SlabTables
{
    public SlabTables(SlabCase slab)
    {
        Layers = slab.Layers.Count;
        LayerOptics[] all =
        [
            new(slab.IndexAbove, 0, 0, 0, 0),
            .. slab.Layers,
            new(slab.IndexBelow, 0, 0, 0, 0),
        ];
        IsPlain = Layers == 1 && all.All(layer => layer.RefractiveIndex == slab.IndexAbove);
        Index = Tables.Of(all, layer => layer.RefractiveIndex);
        // A layer that light goes through unhindered has no depth in free paths.
        Depth = Tables.Of(all, layer => layer.ExtinctionPerCm == 0 ? 0 : layer.ExtinctionPerCm * layer.ThicknessUm * 1e-4);
        Albedo = Tables.Of(all, layer => layer.ExtinctionPerCm == 0 ? 1 : layer.ScatteringPerCm / layer.ExtinctionPerCm);
        Scattering = new HenyeyGreenstein([.. all.Select(layer => layer.Anisotropy)]);
        var surface = Fresnel.Of(slab.IndexAbove, all[1].RefractiveIndex, 1);
        SpecularReflectance = surface.Reflectance;
        Entering = (float)(1 - SpecularReflectance);
    }

    public int Layers { get; }

    /// <summary>One layer, and no surface throws anything back.</summary>
    public bool IsPlain { get; }

    public double SpecularReflectance { get; }

    /// <summary>Weight of a photon that has entered. [1]</summary>
    public float Entering { get; }

    public Vector512<float> Index { get; }

    /// <summary>Thickness in mean free paths. [1]</summary>
    public Vector512<float> Depth { get; }

    /// <summary>Share of an interaction that is scattered. [1]</summary>
    public Vector512<float> Albedo { get; }

    public HenyeyGreenstein Scattering { get; }
}
