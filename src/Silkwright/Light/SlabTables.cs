using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>A slab's layers as tables of sixteen entries: what lies above at 0, the layers from 1, what lies below after them.</summary>
internal sealed class SlabTables
{
    /// <summary>Anisotropies nearer to 0 than this scatter alike into all directions.</summary>
    private const double Isotropic = 1e-3;

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
        Index = Table(all, layer => layer.RefractiveIndex);
        // A layer that light goes through unhindered has no depth in free paths.
        Depth = Table(all, layer => layer.ExtinctionPerCm == 0 ? 0 : layer.ExtinctionPerCm * layer.ThicknessUm * 1e-4);
        Albedo = Table(all, layer => layer.ExtinctionPerCm == 0 ? 1 : layer.ScatteringPerCm / layer.ExtinctionPerCm);
        var directed = all.Select(layer => Math.Abs(layer.Anisotropy) < Isotropic ? layer with { Anisotropy = 0.5 } : layer).ToArray();
        Spread = Table(all, layer => Math.Abs(layer.Anisotropy) < Isotropic ? 1 : 0);
        Forward = Table(directed, layer => (1 + (layer.Anisotropy * layer.Anisotropy)) / (2 * layer.Anisotropy));
        Square = Table(directed, layer => 1 / (2 * layer.Anisotropy));
        Top = Table(directed, layer => 1 - (layer.Anisotropy * layer.Anisotropy));
        Least = Table(directed, layer => 1 - layer.Anisotropy);
        Twice = Table(directed, layer => 2 * layer.Anisotropy);
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

    /// <summary>1 where scattering goes alike into all directions.</summary>
    public Vector512<float> Spread { get; }

    /// <summary>Parts of Henyey and Greenstein's inverse: cosine = forward − square·(top/(least + twice·u))².</summary>
    public Vector512<float> Forward { get; }

    public Vector512<float> Square { get; }

    public Vector512<float> Top { get; }

    public Vector512<float> Least { get; }

    public Vector512<float> Twice { get; }

    private static Vector512<float> Table(LayerOptics[] all, Func<LayerOptics, double> value)
    {
        var entries = new float[Vector512<float>.Count];
        for (var i = 0; i < all.Length; i++)
            entries[i] = (float)value(all[i]);
        return Vector512.Create(entries);
    }
}
