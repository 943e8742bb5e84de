using Silkwright.Artwork;
using Silkwright.Choosing;
using Silkwright.Coating;
using Silkwright.Drying;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Ink;
using Silkwright.Life;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Web.Tests.Samples;

/// <summary>A plan of round, invented numbers, so that a picture can be held against values known beforehand.</summary>
internal static class SamplePlans
{
    public const double PitchUm = 10_000.0 / 120;

    public const double ThreadUm = 34;

    private static readonly StencilEmulsion Wren = new() { Id = "Wren 47", Family = EmulsionFamily.Photopolymer };

    public static StencilPlan Two { get; } = new()
    {
        Job = new Job
        {
            Name = "Harbour choir, front",
            Date = new DateOnly(2026, 11, 25),
            Garment = new Garment("charcoal", "cotton jersey", true),
            Run = 640,
            DueDate = new DateOnly(2026, 11, 27),
            Colours = [Colour("Highlight white", InkKind.Plastisol), Colour("Tide blue", InkKind.WaterBased)],
        },
        ShopName = "An invented shop",
        Currency = "EUR",
        Colours = [Whole, Stuck],
        Screens = 2,
        Cost = new Estimate(18.4, 15.2, 23.9, Ground.Model),
        Minutes = new Estimate(52, 40, 70, Ground.CommonPractice),
        Films = new FilmsTogether { SameSize = true, SameDpi = true, FitsFrame = true },
        MeasureNext = new MeasureNext("Read the stencil thickness of this coat at five points.", "emulsion over mesh and, with it, the exposure window", 3),
        Notes = [new("The film's black was not measured: a UV density of 3.0 to 4.0 is assumed.", Ground.CommonPractice)],
    };

    public static ColourPlan Whole => new()
    {
        Colour = Colour("Highlight white", InkKind.Plastisol),
        Needs = Needs,
        Mesh = Mesh,
        Detail = new DetailVerdict(
            false,
            Estimate.Within(102, 0.1, Ground.Model),
            Estimate.Within(117, 0.1, Ground.Model),
            "Two places on this film are finer than the 117 µm dot that 120/34 clears and anchors.",
            [new FilmPlace(120, 80, 98), new FilmPlace(60, 200, 104)]),
        Emulsion = Wren,
        Coat = new CoatPrediction
        {
            Strokes = [new(StrokeSide.Print), new(StrokeSide.Squeegee), new(StrokeSide.Squeegee)],
            EomUm = new Estimate(6.2, 4.6, 7.9, Ground.Model),
            StencilUm = new Estimate(58.9, 55, 63, Ground.Model),
            WetUm = new Estimate(92, 76, 110, Ground.Model),
            SolidsPercent = new Estimate(40, 38, 42, Ground.Datasheet),
            GramsPerM2 = new Estimate(98, 80, 118, Ground.Model),
            Drivers = [new("pressure of the stroke", 58), new("edge of the trough", 27), new("solids", 15)],
        },
        Drying = new DryingResult
        {
            MinutesToTouchDry = new Estimate(32, 20, 50, Ground.Model),
            MinutesToSafe = new Estimate(110, 75, 170, Ground.Model),
            Curve = [.. Enumerable.Range(0, 61).Select(i => new DryingPoint(i * 4, 6 + (125 * Math.Exp(-i * 4 / 34.0))))],
            EquilibriumMoisturePercent = 6,
            StickRiskPercent = new Estimate(4, 1, 11, Ground.CommonPractice),
            StickReason = "At 25 °C and 45 % humidity the coat ends dry enough not to stick.",
        },
        Exposure = new ExposureWindow
        {
            Counts = ExposureCount.Seconds,
            Least = new Estimate(24, 18, 32, Ground.Model),
            Aim = new Estimate(34, 25, 46, Ground.Model),
            Most = new Estimate(51, 39, 68, Ground.Model),
            OpenChancePercent = 96,
            LatitudeStops = 1.09,
            LatitudeSteps = 2.18,
            FinestHeldUm = new Estimate(91, 70, 120, Ground.Model),
            RequiredFilmDensityUv = 2.6,
            Drivers = [new("lamp output", 61), new("emulsion over mesh", 22), new("speed of the emulsion", 17)],
        },
        Finish = StencilFinish.PostExposed,
        Ink = new InkResult
        {
            WetDepositUm = new Estimate(15, 11, 20, Ground.CommonPractice),
            InkGrams = new Estimate(704, 510, 930, Ground.CommonPractice),
            GramsPerImpression = new Estimate(1.1, 0.8, 1.45, Ground.CommonPractice),
        },
        Life = new LifeResult
        {
            MedianImpressions = new Estimate(14_000, 5_000, 40_000, Ground.CommonPractice),
            WeibullShape = 1.6,
            FinishPercent = new Estimate(98, 92, 99.6, Ground.CommonPractice),
            ExpectedFailures = new Estimate(0.02, 0.004, 0.08, Ground.CommonPractice),
            Curve = [.. Enumerable.Range(0, 41).Select(i => new LifePoint(i * 100, Sound(i * 100, 14_000), Sound(i * 100, 5_000), Sound(i * 100, 40_000)))],
        },
        Spares = new SparesAdvice(0, 0.8, [0.8, 7.4, 14.2]),
        Cost = Cost(1.4, 5.2, 0.2, 2.6),
        Cautions =
        [
            new("Before coating", "Sensitised emulsion can irritate and sensitise skin: wear gloves; the safety data sheet decides.", CautionLevel.Caution),
            new("Before exposing", "Ultraviolet light burns eyes and skin: cover closed, never look in; the lamp's manual and local rules decide.", CautionLevel.Warning),
        ],
        Because = ["Stands up to plastisol, holds the dot within its window, and nothing of it is thrown away."],
        Beaten =
        [
            new(Emulsion("Plover 33", EmulsionFamily.DualCure), "As good on the press; this lot has 6 days left and most of it would be thrown away.", false, new Estimate(2.8, 0.9, 5.1, Ground.Model), Cost(1.3, 5.9, 2.4, 2.6)),
            new(Emulsion("Kestrel 29", EmulsionFamily.Diazo), "Slower to expose by three minutes and needs two more strokes.", false, new Estimate(4.1, 2.0, 6.6, Ground.Model), Cost(1.6, 8.3, 0.8, 2.8)),
            new(Emulsion("Dunlin 44", EmulsionFamily.DualCure), "Its lot ended 9 days ago.", true),
        ],
        Notes =
        [
            new("Fabric thickness of 120/34 was not measured: 1.55 thread diameters.", Ground.Model),
            new("Transfer of 60 to 85 % of the theoretical ink volume.", Ground.CommonPractice),
            new("This lamp's output by the shop's own step test of 12 days ago.", Ground.MeasuredHere),
        ],
    };

    /// <summary>A colour that no emulsion of the shop may print.</summary>
    public static ColourPlan Stuck => Whole with
    {
        Colour = Colour("Tide blue", InkKind.WaterBased),
        Emulsion = null,
        NearestFix = "Buy a photopolymer made for water-based ink, or a diazo and harden it.",
        Coat = null,
        Drying = null,
        Exposure = null,
        Ink = null,
        Life = null,
        Spares = null,
        Cost = null,
        Because = [],
        Cautions = [],
        Beaten = [new(Wren, "Water-based ink softens it.", true)],
    };

    public static WovenMesh Mesh => new()
    {
        Fabric = new MeshFabric(120, ThreadUm, Dyed: true),
        PitchUm = PitchUm,
        OpeningUm = PitchUm - ThreadUm,
        OpenAreaPercent = 35,
        FabricThicknessUm = Estimate.Within(52.7, 0.05, Ground.Model),
        InkVolumeCm3PerM2 = Estimate.Within(18.4, 0.08, Ground.Model),
        VoidUm = Estimate.Within(30.3, 0.1, Ground.Model),
        SmallestDotUm = Estimate.Within(117, 0.1, Ground.CommonPractice),
        SmallestLineUm = Estimate.Within(102, 0.1, Ground.CommonPractice),
    };

    public static FilmMeasurement Film => new()
    {
        File = "choir-highlight.tif",
        WidthPx = 14_400,
        HeightPx = 19_200,
        Dpi = 1200,
        CoveragePercent = 22,
        Components = new FilmCounts(8_120, 77),
        Specks = new FilmCounts(3, 0),
        FinestImage = new FinestFeature(98, [new FilmPlace(120, 80, 98)]),
        ImageWidths = [],
        Halftones = [],
    };

    private static ArtworkNeeds Needs => new()
    {
        FinestLineUm = new Estimate(148, 127, 169, Ground.MeasuredHere),
        FinestGapUm = new Estimate(212, 190, 233, Ground.MeasuredHere),
        SmallestDotUm = new Estimate(98, 77, 119, Ground.MeasuredHere),
        RulingLpi = new Estimate(55, 54.9, 55.1, Ground.MeasuredHere),
        AngleDegrees = 22.5,
        CoveragePercent = Estimate.Exact(22, Ground.MeasuredHere),
        FilmAreaCm2 = Estimate.Exact(1_239, Ground.MeasuredHere),
        FilmWidthMm = 304.8,
        FilmHeightMm = 406.4,
    };

    private static StencilEmulsion Emulsion(string id, EmulsionFamily family) => new() { Id = id, Family = family };

    private static JobColour Colour(string name, InkKind ink) => new() { Name = name, Ink = ink, Film = Film };

    /// <summary>A cost whose emulsion, hands, waste and remakes are as told: half an hour of hands, one failure's worth of risk.</summary>
    private static ScreenCost Cost(double emulsion, double labour, double waste, double remakes) => CostModel.Of(new CostCase
    {
        Screens = 1,
        GramsPerScreen = Estimate.Within(50, 0.2, Ground.Model),
        PricePerKg = Estimate.Exact(emulsion * 20, Ground.MeasuredHere),
        Work = new ScreenWork(Minutes(3), Minutes(2), Minutes(1), Minutes(15), Minutes(0), Minutes(9)),
        DryingPlacePerScreen = Nothing,
        LabourPerHour = Estimate.Within(2 * labour, 0.2, Ground.CommonPractice),
        WastePercent = Estimate.Within(100 * waste / (emulsion + waste), 0.5, Ground.Model),
        ExpectedFailures = Estimate.Within(0.02, 0.5, Ground.CommonPractice),
        RemakeChance = Nothing,
        StopForRemake = Estimate.Exact(Math.Max(0, (remakes / 0.02) - emulsion - labour - waste), Ground.CommonPractice),
        StopForSpare = Nothing,
        FinishPerScreen = Nothing,
        ReclaimPerScreen = Nothing,
    });

    private static Estimate Nothing => Estimate.Exact(0, Ground.Model);

    private static Estimate Minutes(double minutes) => Estimate.Exact(minutes, Ground.CommonPractice);

    private static double Sound(double impressions, double median) => 100 * Math.Pow(0.5, Math.Pow(impressions / median, 1.6));
}
