namespace Silkwright.Light;

/// <summary>How much of a slice of the stencil is coat and not thread: what a path in the coat is held against.</summary>
internal sealed class CoatShare(StencilCase stencil)
{
    /// <summary>Heights looked at within a slice.</summary>
    private const int Heights = 64;

    /// <summary>In a part of a pitch across warp and weft, over both orders of the two.</summary>
    /// <param name="slice">Slice of depth, 0 to <see cref="StencilTally.Depths"/> − 1.</param>
    /// <param name="u">From and to across the warp, from the thread's middle. [µm]</param>
    /// <param name="v">From and to across the weft. [µm]</param>
    /// <returns>[0..1]</returns>
    public double Of(int slice, (double From, double To) u, (double From, double To) v)
    {
        if (stencil.Weave is not { } weave)
            return 1;
        var middle = stencil.PrintSideUm + (weave.ThicknessUm / 2);
        var height = (weave.ThicknessUm - weave.ThreadUm) / 2;
        var sum = 0.0;
        for (var i = 0; i < Heights; i++)
        {
            var z = (slice + ((i + 0.5) / Heights)) * stencil.StencilUm / StencilTally.Depths;
            var (upper, lower) = (HalfChord(z - middle + height), HalfChord(z - middle - height));
            sum += ((1 - Covered(u, upper)) * (1 - Covered(v, lower))) + ((1 - Covered(u, lower)) * (1 - Covered(v, upper)));
        }

        return sum / (2 * Heights);

        double HalfChord(double off) => Math.Sqrt(Math.Max(0, (weave.ThreadUm * weave.ThreadUm / 4) - (off * off)));
    }

    /// <summary>In a whole slice.</summary>
    public double Of(int slice)
    {
        var half = (stencil.Weave?.PitchUm ?? 1) / 2;
        return Of(slice, (-half, half), (-half, half));
    }

    private static double Covered((double From, double To) part, double halfChord) =>
        Math.Max(0, Math.Min(part.To, halfChord) - Math.Max(part.From, -halfChord)) / (part.To - part.From);
}
