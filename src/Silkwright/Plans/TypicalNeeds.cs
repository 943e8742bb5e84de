using Silkwright.Artwork;
using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>
/// What typical kinds of work ask for. Common practice, no source: orders of magnitude to start a conversation with, each
/// replaced by the film as soon as there is one.
/// </summary>
public static class TypicalNeeds
{
    /// <summary>Area of a film nobody described: a full front, 12 x 16 in. [cm²]</summary>
    private const double UsualFilmAreaCm2 = 30.5 * 40.6;

    /// <summary>Plain words for a kind of work.</summary>
    public static string Words(WorkKind kind) => kind switch
    {
        WorkKind.LeftChestSpot => "a left-chest logo in spot colour",
        WorkKind.FullFrontSpot => "a full front in spot colour",
        WorkKind.FullFrontHalftone => "a full front in halftone",
        WorkKind.AthleticNumbers => "athletic numbers",
        WorkKind.FineLettering => "fine lettering",
        WorkKind.LargeSolid => "a large solid",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    public static ArtworkNeeds Of(WorkKind kind) => kind switch
    {
        WorkKind.LeftChestSpot => Spot(line: 300, gap: 300, coverage: 25, area: 100),
        WorkKind.FullFrontSpot => Spot(line: 400, gap: 400, coverage: 20, area: UsualFilmAreaCm2),
        WorkKind.FullFrontHalftone => Halftone(lpi: 50, coverage: 22),
        WorkKind.AthleticNumbers => Spot(line: 1500, gap: 1500, coverage: 30, area: 25 * 25),
        WorkKind.FineLettering => Spot(line: 180, gap: 200, coverage: 8, area: 200),
        WorkKind.LargeSolid => Spot(line: 800, gap: 800, coverage: 45, area: UsualFilmAreaCm2),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>Needs where nothing at all is known.</summary>
    public static ArtworkNeeds Unknown => Spot(line: 400, gap: 400, coverage: 20, area: UsualFilmAreaCm2);

    private static ArtworkNeeds Spot(double line, double gap, double coverage, double area) => new()
    {
        FinestLineUm = Guess(line),
        FinestGapUm = Guess(gap),
        CoveragePercent = GuessedCoverage(coverage),
        FilmAreaCm2 = Guess(area),
    };

    private static ArtworkNeeds Halftone(double lpi, double coverage) => new()
    {
        FinestLineUm = Guess(300),
        FinestGapUm = Guess(300),
        RulingLpi = Estimate.WithinFactor(lpi, 1.2, Ground.CommonPractice),
        SmallestDotUm = Guess(Halftones.DotDiameterUm(lpi, 5)),
        CoveragePercent = GuessedCoverage(coverage),
        FilmAreaCm2 = Guess(UsualFilmAreaCm2),
    };

    private static Estimate Guess(double value) => Estimate.WithinFactor(value, 1.6, Ground.CommonPractice);

    private static Estimate GuessedCoverage(double percent) =>
        new(percent, percent / 2, Math.Min(100, percent * 2), Ground.CommonPractice);
}
