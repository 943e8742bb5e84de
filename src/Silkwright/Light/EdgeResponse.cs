namespace Silkwright.Light;

/// <summary>
/// Dose across an edge out of where light that passes the film at one place ends up: a receiving place x under the black sees all light that has gone sideways by x or more.
/// docs/engines/light.md, equation 8.
/// </summary>
internal sealed class EdgeResponse
{
    /// <summary>By batch: light that went sideways by this boundary of steps or more; the first holds all.</summary>
    private readonly double[][] beyond;

    /// <param name="batches">By batch: light by step, dose-scaled.</param>
    public EdgeResponse(IReadOnlyList<double[]> batches)
    {
        beyond = [.. batches.Select(steps =>
        {
            var sums = new double[steps.Length + 1];
            for (var i = steps.Length - 1; i >= 0; i--)
                sums[i] = sums[i + 1] + steps[i];
            return sums;
        })];
        Mean = [.. Enumerable.Range(0, beyond[0].Length).Select(i => beyond.Average(batch => batch[i]))];
    }

    /// <summary>Mean over the batches, by boundary.</summary>
    private double[] Mean { get; }

    public Sampled Clear => Sampled.Of([.. beyond.Select(batch => batch[0])]);

    /// <summary>Dose under an image at a place.</summary>
    public Sampled Dose(FilmImage image, double xUm)
    {
        var (here, before, after) = (SidewaysSteps.At(xUm), SidewaysSteps.At(xUm - image.WidthUm), SidewaysSteps.At(xUm + image.WidthUm));
        return Sampled.Of([.. beyond.Select(batch => image.Kind switch
        {
            FilmImageKind.Line => batch[0] - At(batch, before) + At(batch, here),
            FilmImageKind.Gap => At(batch, here) - At(batch, after),
            _ => At(batch, here),
        })]);
    }

    /// <summary>Where the dose across an edge has fallen to a share of the clear film's. [µm]</summary>
    /// <param name="share">[1]</param>
    /// <param name="clear">Where the clear film's dose is taken; none: at this depth.</param>
    public Sampled Crossing(double share, EdgeResponse? clear = null)
    {
        var whole = clear ?? this;
        var wanted = share * whole.Mean[0];
        var i = Array.FindIndex(Mean, dose => dose < wanted);
        if (i <= 0)
            return new(SidewaysSteps.BoundaryUm(0), 0);
        var (from, to) = (SidewaysSteps.BoundaryUm(i - 1), SidewaysSteps.BoundaryUm(i));
        var place = from + ((Mean[i - 1] - wanted) / (Mean[i - 1] - Mean[i]) * (to - from));
        var (left, right) = (Math.Max(0, i - SlopeSteps), Math.Min(Mean.Length - 1, i + SlopeSteps - 1));
        var slope = (Mean[left] - Mean[right]) / (SidewaysSteps.BoundaryUm(right) - SidewaysSteps.BoundaryUm(left));
        var at = SidewaysSteps.At(place);
        var off = Sampled.Of([.. beyond.Select((batch, b) => At(batch, at) - (share * whole.beyond[b][0]))]);
        return new(place, slope > 0 ? off.StandardError / slope : 0);
    }

    /// <summary>Steps to each side that the slope at a crossing is taken over.</summary>
    private const int SlopeSteps = 2;

    /// <summary>Between boundaries light is taken as even.</summary>
    private static double At(double[] batch, double at)
    {
        var i = Math.Min((int)at, batch.Length - 2);
        return batch[i] + ((at - i) * (batch[i + 1] - batch[i]));
    }
}
