namespace Silkwright.Light.Surface;

/// <summary>What straight light alone would leave on the squeegee side: the fit tells what scattering makes of it.</summary>
internal static class SurfaceBaseline
{
    /// <summary>A thread's mean chord over its diameter: π/4 (Cauchy). [1]</summary>
    private const double MeanChord = Math.PI / 4;

    /// <summary>Shares of the weave with no, one and two threads above, each with its straight light. [natural log of dose]</summary>
    public static double LogThrough(SurfacePlace place)
    {
        var open = 1 - place.Cover;
        var chordUm = MeanChord * place.ThreadUm;
        var sum = 0.0;
        ReadOnlySpan<double> shares = [open * open, 2 * open * place.Cover, place.Cover * place.Cover];
        for (var threads = 0; threads < shares.Length; threads++)
        {
            var inThreads = threads * chordUm;
            sum += shares[threads] * Math.Exp(-1e-4 * ((place.CoatAbsorptionPerCm * Math.Max(0, place.StencilUm - inThreads)) + (place.ThreadAbsorptionPerCm * inThreads)));
        }

        return Math.Log(sum);
    }
}
