using System.Reflection;

namespace Silkwright.Light.Surface;

/// <summary>What light does beside a film's edge, told within microseconds: polynomials fitted to photons followed. docs/engines/light.md, "Surface".</summary>
public sealed class LightSurface
{
    private const string Resource = "Silkwright.Light.Surface.surface.json";

    private static readonly Lazy<LightSurface> OfTheProject = new(Load);

    private readonly SurfacePolynomial[] polynomials;

    internal LightSurface(SurfaceBuild build, SurfacePolynomial[] polynomials, IReadOnlyList<double> logErrors)
    {
        Build = build;
        this.polynomials = polynomials;
        LogErrors = logErrors;
    }

    /// <summary>The surface that the project carries.</summary>
    public static LightSurface Usual => OfTheProject.Value;

    /// <summary>How it was built.</summary>
    public SurfaceBuild Build { get; }

    internal IReadOnlyList<SurfacePolynomial> Polynomials => polynomials;

    /// <summary>By figure: nine of ten places that were left out of the fit lie within this of their photons, chance included. [natural log]</summary>
    internal IReadOnlyList<double> LogErrors { get; }

    /// <summary>By figure's name: the same in percent; of lengths, of the length and half a µm more.</summary>
    public IReadOnlyDictionary<string, double> ErrorPercent =>
        SurfaceFigures.Names.Select((name, i) => (name, Percent: 100 * (Math.Exp(LogErrors[i]) - 1))).ToDictionary(error => error.name, error => error.Percent);

    /// <summary>[natural log]</summary>
    internal double ErrorOfThroughWorst => LogErrors[SurfaceFigures.ThroughWorstAt];

    /// <summary>Of the undercut at the share that most windows end by. [natural log]</summary>
    internal double ErrorOfUndercut => LogErrors[SurfaceFigures.UndercutAt15At];

    /// <summary>Terms of all figures together.</summary>
    public int Terms => polynomials.Sum(polynomial => polynomial.Terms.Count);

    /// <summary>The figures of a place; outside the range those of the nearest place inside: <see cref="SurfaceRange.Outside"/>.</summary>
    public SurfaceFigures At(SurfacePlace place) => AtInside(SurfaceRange.Inside(place));

    /// <summary>The figures of a place inside the range.</summary>
    internal SurfaceFigures AtInside(SurfacePlace place)
    {
        Span<double> features = stackalloc double[SurfaceFeatures.Count];
        Span<double> table = stackalloc double[SurfaceTerms.TableLength];
        Span<double> logs = stackalloc double[polynomials.Length];
        SurfaceFeatures.Of(place, features);
        SurfaceTerms.Table(features, table);
        for (var i = 0; i < polynomials.Length; i++)
            logs[i] = polynomials[i].Of(table);
        return SurfaceFigures.OfLogs(logs, SurfaceBaseline.LogThrough(place));
    }

    /// <summary>
    /// Dose in the place that gets least, made to fall with every µm of coat on the print side: told at a few thicknesses, each no higher than the one before, straight between them. [natural log]
    /// </summary>
    internal double LogThroughWorst(SurfacePlace inside)
    {
        var (before, at) = (LogWorst(inside with { PrintSideUm = PrintSides[0] }), 0);
        while (true)
        {
            var next = Math.Min(before, LogWorst(inside with { PrintSideUm = PrintSides[at + 1] }));
            if (inside.PrintSideUm <= PrintSides[at + 1])
                return before + ((inside.PrintSideUm - PrintSides[at]) / (PrintSides[at + 1] - PrintSides[at]) * (next - before));
            (before, at) = (next, at + 1);
        }
    }

    /// <summary>[µm]</summary>
    private static readonly double[] PrintSides = [SurfaceRange.LeastPrintSideUm, 5, 12, 30, SurfaceRange.MostPrintSideUm];

    private double LogWorst(SurfacePlace place)
    {
        Span<double> features = stackalloc double[SurfaceFeatures.Count];
        Span<double> table = stackalloc double[SurfaceTerms.TableLength];
        SurfaceFeatures.Of(place, features);
        SurfaceTerms.Table(features, table);
        return polynomials[SurfaceFigures.ThroughWorstAt].Of(table) + SurfaceBaseline.LogThrough(place);
    }

    private static LightSurface Load()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"{Resource} is missing from the program.");
        using var reader = new StreamReader(stream);
        return SurfaceFile.Read(reader.ReadToEnd());
    }
}
