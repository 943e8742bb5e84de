using Silkwright.Estimates;

namespace Silkwright.Light;

/// <summary>What light does beside a film's edge, with intervals that hold both chance and what is assumed. docs/engines/light.md.</summary>
public sealed record EdgeAnswer
{
    /// <summary>An assumed value is moved with this part of the photons: the same ones each time, so that chance moves little.</summary>
    private const int PhotonsPart = 8;

    public required EdgeAsked Asked { get; init; }

    public required StencilResult Result { get; init; }

    /// <summary>Length over which the dose falls by e beyond the edge, on the print side. [µm]</summary>
    public required Estimate LineSpreadUm { get; init; }

    /// <summary>The same on the squeegee side. [µm]</summary>
    public required Estimate LineSpreadSqueegeeSideUm { get; init; }

    /// <summary>How far under the black a coat exposed well cures on the print side: <see cref="StencilShares.WellExposed"/>. [µm]</summary>
    public required Estimate UndercutUm { get; init; }

    /// <summary>The same at the depth where it goes farthest. [µm]</summary>
    public required Estimate FarthestUm { get; init; }

    /// <summary>Saw-tooth of that undercut along the edge. [µm]</summary>
    public required Estimate SawtoothUm { get; init; }

    /// <summary>Dose on the squeegee side, over the light that falls on clear film. [1]</summary>
    public required Estimate ThroughAverage { get; init; }

    /// <summary>The same in the place that gets least. [1]</summary>
    public required Estimate ThroughWorst { get; init; }

    /// <summary>What the width of <see cref="ThroughWorst"/> comes from, largest first.</summary>
    public required IReadOnlyList<Driver> Drivers { get; init; }

    /// <summary>All photons followed, those for the intervals included.</summary>
    public long PhotonsFollowed => Asked.Case.Photons + (FewPhotons(Asked.Case) * (1 + (2 * Asked.Assumed.Count)));

    /// <summary>Follows the photons of a case, then a part of them with each assumed value at its ends.</summary>
    /// <param name="asked">The question.</param>
    /// <param name="threads">How many at once; none: one a core. The answer is the same.</param>
    /// <param name="progress">Share done. [0..1]</param>
    /// <param name="cancel">Stops the work.</param>
    public static EdgeAnswer Of(EdgeAsked asked, int? threads = null, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var runs = 1.0 + ((1.0 + (2 * asked.Assumed.Count)) / PhotonsPart);
        var reading = StencilTransport.Follow(asked.Case, threads, progress is null ? null : new Part(progress, 1 / runs), cancel);
        var few = asked.Case with { Photons = FewPhotons(asked.Case) };
        var done = 1.0;
        var moved = Propagation.ThroughAll(
            values =>
            {
                var stencil = few;
                for (var i = 0; i < values.Count; i++)
                    stencil = asked.Assumed[i].With(stencil, values[i]);
                var figures = StencilTransport.Follow(stencil, threads, null, cancel).MainFigures().Select(figure => figure.Value).ToArray();
                progress?.Report((done += 1.0 / PhotonsPart) / runs);
                return figures;
            },
            [.. asked.Assumed.Select(assumed => assumed.Input)]);
        var estimates = reading.MainFigures().Zip(moved, Around).ToArray();
        return new EdgeAnswer
        {
            Asked = asked,
            Result = reading.Result(),
            LineSpreadUm = AtLeastNothing(estimates[0]),
            LineSpreadSqueegeeSideUm = AtLeastNothing(estimates[1]),
            UndercutUm = estimates[2],
            FarthestUm = estimates[3],
            SawtoothUm = AtLeastNothing(estimates[4]),
            ThroughAverage = AtLeastNothing(estimates[5]),
            ThroughWorst = AtLeastNothing(estimates[6]),
            Drivers = [.. moved[6].Drivers.Where(driver => driver.EffectPercent > 0)],
        };
    }

    private static long FewPhotons(StencilCase stencil) => Math.Max(StencilTransport.Batches, stencil.Photons / PhotonsPart);

    /// <summary>The value of all photons, with the moves of the part and chance added as squares.</summary>
    private static Estimate Around(Sampled figure, Propagated part)
    {
        var (value, chance) = (part.Estimate.Value, Estimate.UsualHalfWidth * figure.StandardError);
        var down = Math.Sqrt(Math.Pow(value - part.Estimate.Low, 2) + (chance * chance));
        var up = Math.Sqrt(Math.Pow(part.Estimate.High - value, 2) + (chance * chance));
        return new(figure.Value, figure.Value - down, figure.Value + up, part.Estimate.Ground);
    }

    private static Estimate AtLeastNothing(Estimate estimate) => estimate.Map(value => Math.Max(0, value));

    private sealed class Part(IProgress<double> whole, double share) : IProgress<double>
    {
        public void Report(double value) => whole.Report(share * value);
    }
}
