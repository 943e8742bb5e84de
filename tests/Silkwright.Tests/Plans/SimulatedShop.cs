using MathNet.Numerics.Distributions;
using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Life;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>
/// A made-up shop whose true costs are known, from figures and formulas of its own: it shares no code with the engines, its parameters lie
/// off their usual values, and it has effects that they lack (a crew that is slow at many strokes, a lamp that eats minutes, a press hall
/// that stops longer, a container never quite emptied, an emulsion that this room does not suit). Stencils fail one by one in it, each
/// replaced by a spare or a remake. Ranges: common practice, no source.
/// </summary>
internal sealed class SimulatedShop
{
    public const int MostSpares = 5;

    /// <summary>What can be done to a stencil in each ink.</summary>
    public static readonly StencilFinish[] Finishes = [StencilFinish.None, StencilFinish.PostExposed, StencilFinish.Hardened];

    private const int Readings = 10;

    /// <summary>Wear makes failures more frequent with age; the engines take it for steeper.</summary>
    private const double Shape = 1.5;

    private static readonly DateOnly Day = new(2026, 11, 25);

    /// <summary>Luck of one stencil after another over many runs, the same for every choice, so that choices are told apart by themselves.</summary>
    private static readonly (double Early, double Age)[][] Runs = DrawRuns(new Random(7));

    private readonly Random random;
    private readonly double crew;
    private readonly double stroke;
    private readonly double lamp;
    private readonly double stopMinutes;
    private readonly double spareMinutes;
    private readonly double usualRun;
    private readonly double carrying;
    private readonly double dryGain;
    private readonly double postExposed;
    private readonly double hardened;
    private readonly double hardening;
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
        spareMinutes = Between(8, 35);
        carrying = Between(1, 4);
        dryGain = Between(1, 1.3);
        postExposed = Between(1.1, 2.6);
        hardened = Between(2, 7);
        hardening = Between(15, 45);
        area = Between(1600, 3400);
        leftInContainer = Between(0.02, 0.1);
        labour = Between(14, 45);
        stopPerMinute = Between(0.5, 2.5);
        pace = Ratio(0.4, 25);
        fault = Between(0.003, 0.04);
        remake = Between(0.005, 0.05);
        usualRun = Ratio(150, 2500);
        Run = (long)(usualRun * Ratio(0.4, 2.5));
        Ink = random.Next(3) switch { 0 => InkKind.WaterBased, _ => InkKind.Plastisol };
        var emulsions = Enumerable.Range(0, random.Next(2, 6)).Select(i => Emulsion($"e{i}")).ToArray();
        Shop = new Shop
        {
            Emulsions = emulsions,
            Meshes = [new MeshFabric(61, 64)],
            Frames = [new Frame { InsideWidthMm = 400, InsideHeightMm = area / 0.85 / 4, Mesh = new MeshFabric(61, 64), Count = 500 }],
            Troughs = [new Trough("t", Between(0.8, 1.6))],
            Prices = new ShopPrices { LabourPerHour = labour, PressStopPerMinute = stopPerMinute },
            RemakeMinutes = stopMinutes * Between(0.8, 1.25),
            SpareMinutes = spareMinutes * Between(0.8, 1.25),
            ScreensPerDay = pace * Between(0.8, 1.25),
            Room = new Room { Celsius = 22, HumidityPercent = Between(35, 65) },
        };
        if (Allowed.Count > 0)
            Shop = Shop with { RunReadings = [.. Enumerable.Range(0, Readings).Select(_ => Counted(Allowed[random.Next(Allowed.Count)]))] };
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

    /// <summary>Emulsions that the ink does not attack.</summary>
    public IReadOnlyList<string> Allowed => [.. Shop.Emulsions.Where(e => e.Resists!.Contains(Ink)).Select(e => e.Id)];

    /// <summary>What the colour's screens truly cost, on average over many runs.</summary>
    public double TrueCost(Choice choice) => Costs(choice.Id, truths[choice.Id], choice.Finish)[choice.Spares];

    /// <summary>What they truly cost with an emulsion where finish and spares suit it best.</summary>
    public double LeastCost(string id) => Finishes.Min(finish => Costs(id, truths[id], finish).Min());

    /// <summary>
    /// The choice of one who knows the shop, the crew, the lamp and every family, but not the luck that an emulsion has in this shop: how long it
    /// lives, how thick it lies, how it suits the room.
    /// </summary>
    public Choice BestButForLuck() => (
        from emulsion in Shop.Emulsions
        where Allowed.Contains(emulsion.Id)
        let truth = TruthOf(emulsion, Luck.None)
        from finish in Finishes
        let costs = Costs(emulsion.Id, truth, finish)
        from spares in Enumerable.Range(0, MostSpares + 1)
        select (Choice: new Choice(emulsion.Id, finish, spares), Cost: costs[spares])).MinBy(choice => choice.Cost).Choice;

    /// <summary>Cost by number of spares.</summary>
    private double[] Costs(string id, Truth truth, StencilFinish finish)
    {
        var price = Shop.Emulsions.First(e => e.Id == id).Price!;
        var used = pace * truth.Grams * truth.PotLifeDays;
        var wasted = Math.Clamp(1 - (used / price.Grams), leftInContainer, 0.98);
        var making = (truth.Grams * price.Cost / price.Grams / (1 - wasted)) + (truth.Minutes / 60 * labour) + (finish switch
        {
            StencilFinish.Hardened => hardening + (8 * crew / 60 * labour),
            StencilFinish.PostExposed => 3 * crew / 60 * labour,
            _ => 0,
        });
        making *= 1 + truth.Remake;
        var median = truth.MedianLife * (Ink == InkKind.Plastisol ? (finish == StencilFinish.None ? 1 : dryGain) : finish switch { StencilFinish.Hardened => hardened, StencilFinish.PostExposed => postExposed, _ => 1 });
        int[] failures = [.. Runs.Select(run => Failures(run, median, truth.Fault))];
        return
        [
            .. Enumerable.Range(0, MostSpares + 1).Select(spares => (making * (1 + spares)) + failures.Average(failed =>
                (Math.Min(failed, spares) * spareMinutes * stopPerMinute)
                + (Math.Max(0, failed - spares) * (making + (stopMinutes * stopPerMinute))))),
        ];
    }

    /// <summary>Stencils that fail in a run, one after the other.</summary>
    private int Failures((double Early, double Age)[] run, double median, double fault)
    {
        var (printed, failed) = (0.0, 0);
        foreach (var luck in run)
        {
            printed += LifeOf(luck, median, fault);
            if (printed >= Run)
                break;
            failed++;
        }

        return failed;
    }

    private static double LifeOf((double Early, double Age) luck, double median, double fault) => luck.Early < fault
        ? 20 + (480 * luck.Early / fault)
        : median * Math.Pow(Math.Log(luck.Age) / Math.Log(0.5), 1 / Shape);

    private static (double Early, double Age)[][] DrawRuns(Random random) =>
        [.. Enumerable.Range(0, 300).Select(_ => Enumerable.Range(0, 20).Select(_ => (random.NextDouble(), 1 - random.NextDouble())).ToArray())];

    private StencilEmulsion Emulsion(string id)
    {
        var family = random.Next(3) switch { 0 => EmulsionFamily.Diazo, 1 => EmulsionFamily.DualCure, _ => EmulsionFamily.Photopolymer };
        var solids = family switch { EmulsionFamily.Diazo => Between(24, 36), EmulsionFamily.DualCure => Between(33, 44), _ => Between(38, 52) };
        var forWater = random.Next(2) == 0;
        var potLife = Between(25, 50);
        var luck = new Luck(
            Life: Math.Exp(Normal.InvCDF(0, 0.45, random.NextDouble())),
            Thickness: Between(0.8, 1.3) / 1.05,
            Seconds: Between(0.65, 1.4),
            PotLife: Between(0.7, 1.3),
            Fault: Between(0.8, 1.25),
            Remake: Between(0.7, 1.4));
        var grams = random.Next(3) == 0 ? 5000 : 1000;
        var emulsion = new StencilEmulsion
        {
            Id = id,
            Family = family,
            Resists = forWater ? [InkKind.Plastisol, InkKind.WaterBased] : [InkKind.Plastisol],
            SolidsPercent = solids,
            PotLifeDays = family == EmulsionFamily.Photopolymer ? null : potLife,
            Price = new ContainerPrice(grams, grams * Between(0.014, 0.05)),
        };
        truths[id] = TruthOf(emulsion, luck);
        return emulsion;
    }

    private Truth TruthOf(StencilEmulsion emulsion, Luck luck)
    {
        var strokes = 2 + Math.Round((50 - emulsion.SolidsPercent!.Value) / 8);
        var seconds = lamp * luck.Seconds * (emulsion.Family switch { EmulsionFamily.Diazo => 180, EmulsionFamily.DualCure => 95, _ => 32 });
        var dryings = strokes > 3 ? 2 : 1;
        return new Truth(
            Grams: area * 1e-4 * (45 + (9.5 * strokes * luck.Thickness)) * 1.06,
            Minutes: (22 * crew) + (strokes * stroke * crew) + (seconds / 60 * 0.6) + (dryings * carrying * crew),
            PotLifeDays: (emulsion.PotLifeDays ?? 600) * luck.PotLife,
            MedianLife: Life(emulsion.Family, emulsion.Resists!.Contains(InkKind.WaterBased)) * luck.Life,
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

    /// <summary>A stencil of an ordinary run of this shop, counted until it broke or came off.</summary>
    private RunReading Counted(string id)
    {
        var truth = truths[id];
        var run = usualRun * Ratio(0.4, 2.5);
        var life = LifeOf((random.NextDouble(), 1 - random.NextDouble()), truth.MedianLife, truth.Fault);
        return new RunReading
        {
            EmulsionId = id,
            Ink = Ink,
            Impressions = Math.Max(1, (long)Math.Min(life, run)),
            Broke = life < run,
        };
    }

    private double Between(double low, double high) => low + ((high - low) * random.NextDouble());

    private double Ratio(double low, double high) => low * Math.Pow(high / low, random.NextDouble());

    /// <summary>What one decides for a colour.</summary>
    public sealed record Choice(string Id, StencilFinish Finish, int Spares);

    private sealed record Luck(double Life, double Thickness, double Seconds, double PotLife, double Fault, double Remake)
    {
        public static readonly Luck None = new(1, 1, 1, 1, 1, 1);
    }

    private sealed record Truth(double Grams, double Minutes, double PotLifeDays, double MedianLife, double Fault, double Remake);
}
