namespace Silkwright.Coating.Learning;

/// <summary>How unlike coats are before anybody has read one: standard deviations as shares of the expected thickness. docs/engines/coating.md, table 2.</summary>
/// <remarks>Common practice says ±30 % from operator to operator; how that is shared out among shop, hand, trough and screen is a guess, no source.</remarks>
internal static class CoatSpreads
{
    public const double Shop = 0.13;
    public const double Operator = 0.11;
    public const double Trough = 0.07;

    /// <summary>A trough whose edge nobody measured, on top: an edge from sharp to round, 0.5 to 1.5 mm in nine of ten, lays within a factor of 1.7. Common practice.</summary>
    public const double UnknownEdge = 0.17;
    public const double Emulsion = 0.08;
    public const double Mesh = 0.07;

    /// <summary>One recipe beside the model's idea of it: strokes over a mesh with an emulsion, in one shop.</summary>
    public const double Recipe = 0.09;

    public const double Screen = 0.1;

    /// <summary>One place of a screen beside the next.</summary>
    public const double Place = 0.06;

    /// <summary>Gauge, one standard deviation. [µm] ±1.5 µm in nine of ten readings: common practice.</summary>
    public const double GaugeUm = 0.91;

    /// <summary>Of each of these: standard deviation of its logarithm, half or double now and then.</summary>
    public const double Spread = 0.5;

    /// <summary>Rows' worth of belief in the residual's size.</summary>
    public const double ResidualFreedom = 6;

    /// <summary>A coat of two strokes and one over a mid mesh, where nothing was read. [µm] Common practice.</summary>
    public const double UsualUm = 12;

    /// <summary>Thinner coats vary no less than one of this. [µm]</summary>
    public const double LeastVaryingUm = 4;
}
