namespace Silkwright.Light;

/// <summary>Shares of the clear film's dose with a meaning. [1]</summary>
public static class StencilShares
{
    /// <summary>
    /// Where the edge of a coat exposed well comes to lie: the print side gets about four times what cures it, so that the squeegee side is cured too. Common practice, no source: a
    /// stencil as thick as light goes down by e, exposed at half as much again as the least that cures through.
    /// </summary>
    public const double WellExposed = 0.25;

    /// <summary>One length of an exponential line spread beyond the edge: 1/(2e).</summary>
    public const double OneLengthOn = 0.5 / Math.E;
}
