namespace Silkwright.Light;

/// <summary>
/// Dose across an edge out of where light that passes the film at one place ends up: a receiving place x under the black sees all light that has gone sideways by x or more.
/// docs/engines/light.md, equation 8.
/// </summary>
internal sealed class EdgeResponse
{
    /// <summary>By batch: light that went sideways by this boundary of steps or more; the first holds all.</summary>
    private readonly double[][] beyond;

    /// <summary>Mean over the batches, by boundary.</summary>
    private readonly double[] mean;

    /// <param name="batches">By batch: light by step, dose-scaled.</param>
    public EdgeResponse(IReadOnlyList<double[]> batches)
    {
        beyond = [.. batches.Select(Beyond)];
        mean = new double[beyond[0].Length];
        foreach (var batch in beyond)
        {
            for (var i = 0; i < mean.Length; i++)
                mean[i] += batch[i] / beyond.Length;
        }
    }

    public Sampled Clear => Each(batch => batch[0]);

    /// <summary>Dose under an image at a place.</summary>
    public Sampled Dose(FilmImage image, double xUm)
    {
        var (here, before, after) = (SidewaysSteps.At(xUm), SidewaysSteps.At(xUm - image.WidthUm), SidewaysSteps.At(xUm + image.WidthUm));
        return image.Kind switch
        {
            FilmImageKind.Line => Each(batch => batch[0] - At(batch, before) + At(batch, here)),
            FilmImageKind.Gap => Each(batch => At(batch, here) - At(batch, after)),
            _ => Each(batch => At(batch, here)),
        };
    }

    /// <summary>Where the dose across an edge has fallen to a share of the clear film's. [µm]</summary>
    /// <param name="share">[1]</param>
    /// <param name="clear">Where the clear film's dose is taken; none: at this depth.</param>
    public Sampled Crossing(double share, EdgeResponse? clear = null)
    {
        var whole = clear ?? this;
        // Where no light comes nothing spreads.
        if (mean[0] <= 0)
            return default;
        var wanted = share * whole.mean[0];
        var i = Array.FindIndex(mean, dose => dose < wanted);
        if (i <= 0)
            return new(SidewaysSteps.BoundaryUm(0), 0);
        var (from, to) = (SidewaysSteps.BoundaryUm(i - 1), SidewaysSteps.BoundaryUm(i));
        var place = from + ((mean[i - 1] - wanted) / (mean[i - 1] - mean[i]) * (to - from));
        var (left, right) = (Math.Max(0, i - SlopeSteps), Math.Min(mean.Length - 1, i + SlopeSteps - 1));
        var slope = (mean[left] - mean[right]) / (SidewaysSteps.BoundaryUm(right) - SidewaysSteps.BoundaryUm(left));
        var at = SidewaysSteps.At(place);
        Span<double> off = stackalloc double[beyond.Length];
        for (var b = 0; b < off.Length; b++)
            off[b] = At(beyond[b], at) - (share * whole.beyond[b][0]);
        return new(place, slope > 0 ? Sampled.Of(off).StandardError / slope : 0);
    }

    /// <summary>Steps to each side that the slope at a crossing is taken over.</summary>
    private const int SlopeSteps = 2;

    private Sampled Each(Func<double[], double> figure)
    {
        Span<double> figures = stackalloc double[beyond.Length];
        for (var b = 0; b < figures.Length; b++)
            figures[b] = figure(beyond[b]);
        return Sampled.Of(figures);
    }

    private static double[] Beyond(double[] steps)
    {
        var sums = new double[steps.Length + 1];
        for (var i = steps.Length - 1; i >= 0; i--)
            sums[i] = sums[i + 1] + steps[i];
        return sums;
    }

    /// <summary>Between boundaries light is taken as even.</summary>
    private static double At(double[] batch, double at)
    {
        var i = Math.Min((int)at, batch.Length - 2);
        return batch[i] + ((at - i) * (batch[i + 1] - batch[i]));
    }
}
