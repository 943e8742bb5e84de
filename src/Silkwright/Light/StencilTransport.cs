namespace Silkwright.Light;

/// <summary>Monte Carlo of light through film, gap, coat and woven threads to the backing. docs/engines/light.md.</summary>
public static class StencilTransport
{
    /// <summary>Batches that photons are followed in: the grain of the work shared out, and of the standard errors.</summary>
    public const int Batches = 64;

    /// <summary>Follows the photons of a case.</summary>
    /// <param name="stencil">The case.</param>
    /// <param name="threads">How many at once; none: one a core. The result is the same.</param>
    /// <param name="progress">Share done. [0..1]</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public static StencilResult Of(StencilCase stencil, int? threads = null, IProgress<double>? progress = null, CancellationToken cancel = default) =>
        Follow(stencil, threads, progress, cancel).Result();

    /// <summary>The same, for whoever reads a few figures alone.</summary>
    internal static StencilReading Follow(StencilCase stencil, int? threads, IProgress<double>? progress, CancellationToken cancel)
    {
        StencilChecks.ThrowIfImpossible(stencil);
        var tables = new StencilTables(stencil);
        var tallies = new StencilTally[Batches];
        Shared.Run(Batches, threads, batch =>
        {
            var photons = (int)((stencil.Photons * (batch + 1) / Batches) - (stencil.Photons * batch / Batches));
            tallies[batch] = StencilBlock.Follow(tables, BlockKeys.Of(stencil.Seed, (ulong)batch), photons, cancel);
        }, progress, cancel);
        return new StencilReading(stencil, tallies);
    }
}
