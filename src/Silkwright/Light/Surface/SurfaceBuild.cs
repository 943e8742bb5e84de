namespace Silkwright.Light.Surface;

/// <summary>Builds a surface: photons of many places followed, then few terms fitted to each figure.</summary>
/// <param name="Places">Places followed.</param>
/// <param name="Photons">Of each place.</param>
/// <param name="Seed">The same seed gives the same surface.</param>
public sealed record SurfaceBuild(int Places, long Photons, ulong Seed)
{
    /// <summary>What the surface of the project was built with.</summary>
    public static SurfaceBuild Usual { get; } = new(2400, 80_000, 1);

    /// <summary>Beyond this the errors that chance adds weigh a place less. [log]</summary>
    private const double SurfaceError = 0.1;

    /// <summary>Places that chance leaves more unsure than this tell nothing. [log]</summary>
    public const double MostChance = 0.3;

    /// <summary>Numbers of terms tried.</summary>
    private static readonly int[] Counts = [15, 25, 40, 60, 80, 100, 130, 160, 200, 250, 300];

    /// <summary>Parts for the error: each is told from the others.</summary>
    private const int Parts = 5;

    /// <summary>Of the work, the photons. [1]</summary>
    private const double PhotonsShare = 0.9;

    /// <summary>Follows and fits.</summary>
    /// <param name="progress">Share done. [0..1]</param>
    /// <param name="cancel">Stops the work.</param>
    public LightSurface Run(IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var samples = Follow(progress, cancel);
        var terms = SurfaceTerms.Candidates();
        var table = samples.Select(sample => Row(sample.Place)).ToArray();
        var figures = SurfaceFigures.Names.Count;
        var (polynomials, errors) = (new SurfacePolynomial[figures], new double[figures]);
        for (var figure = 0; figure < figures; figure++)
        {
            cancel.ThrowIfCancellationRequested();
            var rows = Enumerable.Range(0, samples.Length).Where(row => samples[row].Errors[figure] <= MostChance && double.IsFinite(samples[row].Logs[figure])).ToArray();
            (polynomials[figure], errors[figure]) = Fit(rows, figure, samples, table, terms);
            progress?.Report(PhotonsShare + ((1 - PhotonsShare) * (figure + 1) / figures));
        }

        return new LightSurface(this, polynomials, errors);
    }

    /// <summary>As many terms as tell left-out places best, and the error that nine of ten of those stay within.</summary>
    private static (SurfacePolynomial Polynomial, double LogError) Fit(int[] rows, int figure, SurfaceSample[] samples, double[][] table, IReadOnlyList<SurfaceTerm> terms)
    {
        var off = Counts.Select(_ => new List<double>()).ToArray();
        for (var part = 0; part < Parts; part++)
        {
            var told = Path([.. rows.Where((_, i) => i % Parts != part)]);
            foreach (var row in rows.Where((_, i) => i % Parts == part))
            {
                for (var count = 0; count < Counts.Length; count++)
                    off[count].Add(Math.Abs(told[count].Of(table[row]) - samples[row].Logs[figure]));
            }
        }

        foreach (var errors in off)
            errors.Sort();
        var nine = off.Select(errors => errors[(int)(0.9 * errors.Count)]).ToArray();
        var best = Array.IndexOf(nine, nine.Min());
        return (Path(rows)[best], nine[best]);

        IReadOnlyList<SurfacePolynomial> Path(int[] of)
        {
            var weights = of.Select(row => 1 / Math.Sqrt((SurfaceError * SurfaceError) + (samples[row].Errors[figure] * samples[row].Errors[figure]))).ToArray();
            var columns = terms.Select(term => of.Select((row, i) => weights[i] * term.Of(table[row])).ToArray()).ToArray();
            return [.. SparseFit.Of(columns, [.. of.Select((row, i) => weights[i] * samples[row].Logs[figure])], Counts)
                .Select(fit => new SurfacePolynomial([.. fit.Columns.Select(column => terms[column])], fit.Coefficients))];
        }
    }

    private static double[] Row(SurfacePlace place)
    {
        var row = new double[SurfaceTerms.TableLength];
        SurfaceTerms.Table(place, row);
        return row;
    }

    private SurfaceSample[] Follow(IProgress<double>? progress, CancellationToken cancel)
    {
        var places = SurfaceDesign.Places(Places, Seed);
        var samples = new SurfaceSample[places.Count];
        var done = 0;
        Parallel.For(0, places.Count, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancel }, i =>
        {
            var result = StencilTransport.Of(places[i].Case(Photons, Seed + (ulong)i), threads: 1, cancel: cancel);
            var (logs, errors) = SurfaceFigures.Sampled(result, SurfaceBaseline.LogThrough(places[i]));
            samples[i] = new(places[i], logs, errors);
            progress?.Report(PhotonsShare * Interlocked.Increment(ref done) / places.Count);
        });
        return samples;
    }
}
