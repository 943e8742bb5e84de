namespace Silkwright.Moire;

/// <summary>One beat of two lattices.</summary>
public sealed record MoirePattern
{
    /// <summary>The difference of the two overtones: its frequency and direction.</summary>
    public required GratingVector Vector { get; init; }

    /// <summary>The halftone's overtone; none where threads and knit beat.</summary>
    public OrderPair? Ruling { get; init; }

    /// <summary>The mesh's overtone; none where halftone and knit beat.</summary>
    public OrderPair? Thread { get; init; }

    /// <summary>The knit's overtone; none where halftone and mesh beat.</summary>
    public OrderPair? Knit { get; init; }

    /// <summary>Swing of light and dark, against a middle tone. [1], 0 to 1.</summary>
    public required double Contrast { get; init; }

    /// <summary>Its contrast over what an eye just sees on a print at this period. [1]; 1 is just seen.</summary>
    public required double TimesSeen { get; init; }

    /// <summary>0 unseen, 0.5 just seen, towards 1 the plainer it is. [1]</summary>
    public double Visibility => Moire.Visibility.Of(TimesSeen);
}
