namespace Silkwright.Light;

/// <summary>A coated mesh under a film in the exposure unit, lit from the print side. Lengths from above to below.</summary>
public sealed record StencilCase
{
    public LampLight Lamp { get; init; } = LampLight.Collimated;

    public FilmImage Image { get; init; } = FilmImage.Edge;

    /// <summary>Refractive index of what carries the image: film, or 1 where light comes straight out of air onto a mask printed on the coat. [1]</summary>
    public double FilmIndex { get; init; } = 1.5;

    /// <summary>Film between image and coat: its thickness where the film lies the wrong way round, else 0. [µm], 0 or more.</summary>
    public double CarrierUm { get; init; }

    /// <summary>Air between film and coat. [µm], 0 or more.</summary>
    public double GapUm { get; init; }

    public required TurbidMedium Coat { get; init; }

    /// <summary>Coat over the mesh on the print side. [µm], 0 or more.</summary>
    public required double PrintSideUm { get; init; }

    /// <summary>Mesh in the coat; none: the coat alone.</summary>
    public StencilWeave? Weave { get; init; }

    /// <summary>Coat over the mesh on the squeegee side. [µm], 0 or more.</summary>
    public double SqueegeeSideUm { get; init; }

    /// <summary>Refractive index of what lies between coat and backing: air. [1]</summary>
    public double BackingIndex { get; init; } = 1;

    /// <summary>Share of light that the backing throws back, alike in all directions. [1], 0 to 1.</summary>
    public double BackingReflectance { get; init; }

    /// <summary>Photons followed, <see cref="StencilTransport.Batches"/> or more.</summary>
    public required long Photons { get; init; }

    /// <summary>The same seed and number of photons give the same result to the last bit.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Coat and mesh together. [µm]</summary>
    public double StencilUm => PrintSideUm + (Weave?.ThicknessUm ?? 0) + SqueegeeSideUm;

    /// <summary>Left and right of the edge are alike but for the image, so that every photon counts on both sides.</summary>
    public bool IsEven => Lamp.SlantDegrees == 0;
}
