namespace Silkwright.Light;

/// <summary>The dose in a stencil across the film's image, and where the light went.</summary>
/// <remarks>
/// Dose is fluence: light from all sides on a small ball, over the light that falls on the same surface under clear film [1]; what the coat swallows of it a µm is this times its
/// absorption. It may pass 1 where scattered light goes more than one way.
/// </remarks>
public sealed record StencilResult
{
    public required StencilCase Case { get; init; }

    /// <summary>Middles of the slices of depth below the coat's print side. [µm]</summary>
    public required IReadOnlyList<double> DepthsUm { get; init; }

    /// <summary>Places across the image, from the edge at 0 towards the black. [µm]</summary>
    public required IReadOnlyList<double> PlacesUm { get; init; }

    /// <summary>Dose by depth, then by place, over all phases of the weave. [1]</summary>
    public required IReadOnlyList<IReadOnlyList<Sampled>> Dose { get; init; }

    /// <summary>Dose by depth under clear film without an image. [1]</summary>
    public required IReadOnlyList<Sampled> ClearDose { get; init; }

    /// <summary>How far beyond the film's edge the dose on the print side falls to shares of what it is under clear film.</summary>
    public required IReadOnlyList<UndercutAt> Undercuts { get; init; }

    /// <summary>
    /// Length over which the dose falls by e beyond the edge, on the print side: where it has fallen to 1/(2e) of the clear film's, half being left at the edge. [µm]
    /// </summary>
    public required Sampled LineSpreadUm { get; init; }

    /// <summary>The same on the squeegee side. [µm]</summary>
    public required Sampled LineSpreadSqueegeeSideUm { get; init; }

    /// <summary>Dose on the squeegee side under clear film. [1]</summary>
    public required ThroughDose Through { get; init; }

    /// <summary>Gone back through the plane of the image, the first surface's share included. [share of the light under clear film]</summary>
    public required Sampled Back { get; init; }

    /// <summary>Swallowed by the backing. [share]</summary>
    public required Sampled Backing { get; init; }

    /// <summary>Absorbed in the coat. [share]</summary>
    public required Sampled Coat { get; init; }

    /// <summary>Absorbed in the threads. [share]</summary>
    public required Sampled Threads { get; init; }

    /// <summary>Given to or taken from the rest by ending weak photons by lot; its mean is nothing. [share]</summary>
    public required double Roulette { get; init; }

    /// <summary>The undercut at a share of the clear film's dose, which is one of those read.</summary>
    public UndercutAt UndercutWhere(double share) => Undercuts.Single(undercut => undercut.Share == share);

    /// <summary>Dose at a slice of depth and any place across the image. [1]</summary>
    /// <param name="depth">Which of <see cref="DepthsUm"/>.</param>
    /// <param name="xUm">[µm]</param>
    public double DoseAt(int depth, double xUm)
    {
        var places = (double[])PlacesUm;
        var i = Array.BinarySearch(places, xUm);
        if (i >= 0)
            return Dose[depth][i].Value;
        i = ~i;
        if (i == 0 || i == places.Length)
            return Dose[depth][Math.Min(i, places.Length - 1)].Value;
        var share = (xUm - places[i - 1]) / (places[i] - places[i - 1]);
        return ((1 - share) * Dose[depth][i - 1].Value) + (share * Dose[depth][i].Value);
    }
}
