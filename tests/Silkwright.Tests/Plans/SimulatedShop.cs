using MathNet.Numerics.Distributions;
using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>
/// A made-up shop whose true costs are known, from figures and formulas of its own: it shares no code with the engines, its parameters lie
/// off their usual values, and it has effects that they lack (a crew that is slow at many strokes, a lamp that eats minutes, a press hall
/// that stops longer, a container never quite emptied, an emulsion that this room does not suit). Ranges: common practice, no source.
/// </summary>
internal sealed class SimulatedShop
{
    private static readonly DateOnly Day = new(2026, 11, 25);

    private readonly Random random;
    private readonly double crew;
    private readonly double stroke;
    private readonly double lamp;
    private readonly double stopMinutes;
    private readonly double area;
    private readonly double leftInContainer;
    private readonly double labour;
    private readonly double stopPerMinute;
    private readonly double pace;

    /// <summary>Faults of making come from the crew and its room, somewhat more with one emulsion than with another.</summary>
    private readonly double fault;
    private readonly double remake;
    private readonly Dictionary<string, Truth> truths = [];

    public SimulatedShop(int seed)
    {
        random = new Random(seed);
        crew = Between(0.75, 1.5);
        stroke = Between(0.3, 1.0);
        lamp = Between(0.6, 1.8);
        stopMinutes = Between(50, 260);
        area = Between(1600, 3400);
        leftInContainer = Between(0.02, 0.1);
        labour = Between(14, 45);
        stopPerMinute = Between(0.5, 2.5);
        pace = Ratio(0.4, 25);
        fault = Between(0.003, 0.04);
        remake = Between(0.005, 0.05);
        Run = (long)Ratio(60, 6000);
        Ink = random.Next(3) switch { 0 => InkKind.WaterBased, _ => InkKind.Plastisol };
        var emulsions = Enumerable.Range(0, random.Next(2, 6)).Select(i => Emulsion($"e{i}")).ToArray();
        Shop = new Shop
        {
            Emulsions = emulsions,
            Meshes = [new MeshFabric(61, 64)],
            Troughs = [new Trough("t", Between(0.8, 1.6))],
            Prices = new ShopPrices { LabourPerHour = labour, PressStopPerMinute = stopPerMinute },
            ScreensPerDay = pace * Between(0.8, 1.25),
            Room = new Room { Celsius = 22, HumidityPercent = Between(35, 65) },
            CoatReadings = [.. Enumerable.Range(0, 10).Select(_ => Reading(emulsions[random.Next(emulsions.Length)]))],
        };
        Job = new Job
        {
            Name = "simulated",
            Date = Day,
            Run = Run,
            Colours = [new JobColour { Name = "one", Ink = Ink, Kind = WorkKind.FullFrontSpot }],
        };
    }

    public Shop Shop { get; }

    public Job Job { get; }

    private long Run { get; }

    private InkKind Ink { get; }

    /// <summary>What the colour's screen truly costs with an emulsion, on average; none where the ink attacks it.</summary>
    public double? TrueCost(string id)
    {
        var emulsion = Shop.Emulsions.First(e => e.Id == id);
        return emulsion.Resists!.Contains(Ink) ? Cost(emulsion, truths[id]) : null;
    }

    /// <summary>
    /// What one would expect it to cost who knows the shop, the crew, the lamp and every family, but not the luck that this emulsion has in this
    /// shop: how long it lives, how thick it lies, how it suits the room. None where the ink attacks it.
    /// </summary>
    public double? CostButForLuck(string id)
    {
        var emulsion = Shop.Emulsions.First(e => e.Id == id);
        return emulsion.Resists!.Contains(Ink) ? Cost(emulsion, TruthOf(emulsion.Family, emulsion.SolidsPercent!.Value, emulsion.PotLifeDays, emulsion.Resists!.Contains(InkKind.WaterBased), Luck.None)) : null;
    }

    private double Cost(StencilEmulsion emulsion, Truth truth)
    {
        var pricePerGram = emulsion.Price!.Cost / emulsion.Price.Grams;
        var used = pace * truth.Grams * truth.PotLifeDays;
        var wasted = Math.Clamp(1 - (used / emulsion.Price.Grams), leftInContainer, 0.98);
        var making = (truth.Grams * pricePerGram / (1 - wasted)) + (truth.Minutes / 60 * labour);
        var failures = truth.Fault + (1 - Math.Exp(-Math.Log(2) * Math.Pow(Run / truth.MedianLife, 1.5)));
        return (making * (1 + truth.Remake)) + (failures * (making + (stopMinutes * stopPerMinute)));
    }

    private StencilEmulsion Emulsion(string id)
    {
        var family = random.Next(3) switch { 0 => EmulsionFamily.Diazo, 1 => EmulsionFamily.DualCure, _ => EmulsionFamily.Photopolymer };
        var solids = family switch { EmulsionFamily.Diazo => Between(24, 36), EmulsionFamily.DualCure => Between(33, 44), _ => Between(38, 52) };
        var forWater = random.Next(2) == 0;
        var potLife = Between(25, 50);
        truths[id] = TruthOf(family, solids, family == EmulsionFamily.Photopolymer ? null : potLife, forWater, new Luck(
            Life: Math.Exp(Normal.InvCDF(0, 0.45, random.NextDouble())),
            Thickness: Between(0.8, 1.3) / 1.05,
            Seconds: Between(0.65, 1.4),
            PotLife: Between(0.7, 1.3),
            Fault: Between(0.8, 1.25),
            Remake: Between(0.7, 1.4)));
        return new StencilEmulsion
        {
            Id = id,
            Family = family,
            Resists = forWater ? [InkKind.Plastisol, InkKind.WaterBased] : [InkKind.Plastisol],
            SolidsPercent = solids,
            PotLifeDays = family == EmulsionFamily.Photopolymer ? null : potLife,
            Price = new ContainerPrice(random.Next(3) == 0 ? 5000 : 1000, 0) is var size ? size with { Cost = size.Grams * Between(0.014, 0.05) } : null,
        };
    }

    private Truth TruthOf(EmulsionFamily family, double solids, double? potLifeDays, bool forWater, Luck luck)
    {
        var strokes = 2 + Math.Round((50 - solids) / 8);
        var seconds = lamp * luck.Seconds * (family switch { EmulsionFamily.Diazo => 180, EmulsionFamily.DualCure => 95, _ => 32 });
        return new Truth(
            Grams: area * 1e-4 * (45 + (9.5 * strokes * luck.Thickness)) * 1.06,
            Minutes: (22 * crew) + (strokes * stroke * crew) + (seconds / 60 * 0.6),
            PotLifeDays: (potLifeDays ?? 600) * luck.PotLife,
            MedianLife: Life(family, forWater) * luck.Life,
            Fault: fault * luck.Fault,
            Remake: remake * luck.Remake);
    }

    private double Life(EmulsionFamily family, bool forWater) => (Ink, family) switch
    {
        (InkKind.WaterBased, EmulsionFamily.Diazo) => 45_000,
        (InkKind.WaterBased, EmulsionFamily.DualCure) => 2_800,
        (InkKind.WaterBased, _) => 5_500,
        (_, EmulsionFamily.Diazo) => 15_000,
        _ => forWater ? 22_000 : 30_000,
    };

    private CoatReading Reading(StencilEmulsion emulsion)
    {
        var (print, squeegee) = (random.Next(1, 3), random.Next(1, 3));
        return new CoatReading
        {
            EmulsionId = emulsion.Id,
            Mesh = new MeshFabric(61, 64),
            TroughId = "t",
            Strokes = [.. Enumerable.Repeat(new Stroke(StrokeSide.Print), print), .. Enumerable.Repeat(new Stroke(StrokeSide.Squeegee), squeegee)],
            EomUm = Math.Max(1, (emulsion.SolidsPercent!.Value / 12 * (print + squeegee) * Between(0.7, 1.2)) - 2),
        };
    }

    private double Between(double low, double high) => low + ((high - low) * random.NextDouble());

    private double Ratio(double low, double high) => low * Math.Pow(high / low, random.NextDouble());

    private sealed record Luck(double Life, double Thickness, double Seconds, double PotLife, double Fault, double Remake)
    {
        public static readonly Luck None = new(1, 1, 1, 1, 1, 1);
    }

    private sealed record Truth(double Grams, double Minutes, double PotLifeDays, double MedianLife, double Fault, double Remake);
}
