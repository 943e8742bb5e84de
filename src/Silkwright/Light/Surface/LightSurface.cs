using Silkwright.Estimates;

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

    private SurfaceFigures AtInside(SurfacePlace place)
    {
        Span<double> table = stackalloc double[SurfaceTerms.TableLength];
        Span<double> logs = stackalloc double[polynomials.Length];
        SurfaceTerms.Table(place, table);
        for (var i = 0; i < polynomials.Length; i++)
            logs[i] = polynomials[i].Of(table);
        return SurfaceFigures.OfLogs(logs, SurfaceBaseline.LogThrough(place));
    }

    /// <summary>Dose on the print side of a place inside the range. [natural log]</summary>
    internal double LogPrint(SurfacePlace inside)
    {
        Span<double> table = stackalloc double[SurfaceTerms.TableLength];
        SurfaceTerms.Table(inside, table);
        return polynomials[SurfaceFigures.PrintAt].Of(table);
    }

    /// <summary>Dose on the print side and the three undercuts alone, of a place inside the range: what a window asks for most.</summary>
    internal (double LogPrint, double At35Um, double At15Um, double At05Um) Edge(SurfacePlace inside)
    {
        Span<double> table = stackalloc double[SurfaceTerms.TableLength];
        SurfaceTerms.Table(inside, table);
        return (polynomials[SurfaceFigures.PrintAt].Of(table), Length(SurfaceFigures.UndercutAt35At, table), Length(SurfaceFigures.UndercutAt15At, table), Length(SurfaceFigures.UndercutAt05At, table));
    }

    private double Length(int figure, ReadOnlySpan<double> table) => SurfaceFigures.FromLength(polynomials[figure].Of(table));

    /// <summary>
    /// Dose in the place that gets least, made to fall with every µm of coat on the print side: told at a few thicknesses, each no higher than the one before, straight between them. [natural log]
    /// </summary>
    /// <param name="printSideUm">Within the range. [µm]</param>
    /// <param name="placeOf">The place of each thickness; what is outside the range takes the dose that its further absorption lengths leave.</param>
    internal double LogThroughWorst(double printSideUm, Func<double, SurfacePlace> placeOf)
    {
        var (before, at) = (LogWorst(placeOf(PrintSides[0])), 0);
        while (true)
        {
            var next = Math.Min(before, LogWorst(placeOf(PrintSides[at + 1])));
            if (printSideUm <= PrintSides[at + 1])
                return before + ((printSideUm - PrintSides[at]) / (PrintSides[at + 1] - PrintSides[at]) * (next - before));
            (before, at) = (next, at + 1);
        }
    }

    /// <summary>[µm]</summary>
    private static readonly double[] PrintSides = [SurfaceRange.LeastPrintSideUm, 5, 12, 30, SurfaceRange.MostPrintSideUm];

    private double LogWorst(SurfacePlace place)
    {
        var inside = SurfaceRange.Inside(place);
        Span<double> table = stackalloc double[SurfaceTerms.TableLength];
        SurfaceTerms.Table(inside, table);
        return polynomials[SurfaceFigures.ThroughWorstAt].Of(table) + SurfaceBaseline.LogThrough(inside) - Math.Max(0, place.AbsorptionLengths - inside.AbsorptionLengths);
    }

    private static LightSurface Load() => SurfaceFile.Read(EmbeddedText.Read(Resource));
}
