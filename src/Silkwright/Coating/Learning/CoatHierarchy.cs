using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Statistics.Mixed;

namespace Silkwright.Coating.Learning;

/// <summary>What gauge readings of any shops, people, troughs, emulsions and meshes say together of any coat.</summary>
/// <remarks>
/// A mixed model about the balance of volumes: thickness = balance + its constants' shifts + shares of the thickness that shop, operator, trough, emulsion,
/// mesh class, recipe and screen lay more or less. Each group's share is drawn towards its like as far as its own readings are few. docs/engines/coating.md,
/// equations 14 to 18. Immutable; the same readings give the same answer whatever their order.
/// </remarks>
public sealed class CoatHierarchy
{
    private static readonly CoatTerm[] Terms =
    [
        new("shop", coat => coat.Shop, row => CoatSpreads.Shop * row.VaryingUm),
        new("operator", coat => coat.Operator is { } name ? (coat.Shop, name) : null, row => CoatSpreads.Operator * row.VaryingUm),
        new("trough", coat => coat.Trough.Id.Length > 0 ? (coat.Shop, coat.Trough.Id) : null, row => row.TroughShare * row.VaryingUm),
        new("recipe", coat => (coat.Shop, coat.Emulsion.Id, coat.Mesh.Fabric.Name, StrokesKey(coat)), row => CoatSpreads.Recipe * row.VaryingUm),
        new("screen", coat => coat.Screen is { } name ? (coat.Shop, name) : null, row => CoatSpreads.Screen * row.VaryingUm),
        new("emulsion", coat => coat.Emulsion.Id, row => row.EmulsionUm),
        new("mesh", coat => coat.Mesh.Fabric.Name, row => row.MeshUm),
        .. Enumerable.Range(0, LiquidCoat.SharedConstants).Select(k => new CoatTerm($"constant {k + 1}", _ => 0, row => row.Slopes.Constants[k], Known: true)),
    ];

    private const int Shops = 0;
    private const int Recipes = 3;
    private const int Screens = 4;
    private const double HalfWidth90 = 1.6449;

    private readonly MixedFit? fit;
    private readonly Dictionary<object, int>[] levels = [.. Terms.Select(_ => new Dictionary<object, int>())];
    private readonly double typicalUm;
    private readonly int[] readsOfRecipe = [];

    /// <summary>How far each of the balance's constants was drawn, in standard deviations of what is believed of it.</summary>
    private readonly double[] constants = [];

    private CoatHierarchy(IReadOnlyList<CoatRead> reads, CancellationToken cancel)
    {
        Count = reads.Count;
        if (reads.Count == 0)
            return;
        var shapes = new Dictionary<CoatShape, CoatColumns>();
        var rows = reads.Select(RowOf).ToArray();
        typicalUm = rows.Average(row => row.VaryingUm);
        fit = MixedFit.Of(
            new MixedModel
            {
                Response = [.. reads.Zip(rows, (read, row) => read.EomUm - row.Slopes.EomUm)],
                Fixed = [],
                Random = [.. Terms.Select((term, t) => TermOf(term, levels[t], reads, rows))],
                Weights = [.. reads.Zip(rows, (read, row) => 1 / (row.PlaceVariance + NamelessVariance(read.Coat, row)))],
                Residual = new ResidualPrior(1, CoatSpreads.ResidualFreedom),
            },
            cancel);
        constants = [.. Enumerable.Range(Terms.Length - LiquidCoat.SharedConstants, LiquidCoat.SharedConstants).Select(t => fit.Effects(t, 0)[0])];
        readsOfRecipe = new int[levels[Recipes].Count];
        foreach (var read in reads)
            readsOfRecipe[LevelOf(Recipes, read.Coat)!.Value]++;

        CoatColumns RowOf(CoatRead read)
        {
            var shape = CoatShape.Of(read.Coat);
            return shapes.TryGetValue(shape, out var row) ? row : shapes[shape] = CoatColumns.Of(read.Coat);
        }
    }

    /// <summary>Readings learnt from.</summary>
    public int Count { get; }

    /// <summary>Learns.</summary>
    /// <param name="reads">In any order; none leaves the balance alone.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coat's strokes or edge make no sense, or a reading is no number.</exception>
    public static CoatHierarchy Of(IReadOnlyList<CoatRead> reads, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(reads);
        if (reads.FirstOrDefault(read => !double.IsFinite(read.EomUm)) is { } none)
            throw new ArgumentOutOfRangeException(nameof(reads), none.EomUm, "A reading must be a number.");
        return new CoatHierarchy(reads, cancel);
    }

    /// <summary>One new reading of a coat, on a screen of its own unless it names one. [µm]</summary>
    public Estimate Expect(CoatObservation coat)
    {
        var row = CoatColumns.Of(coat);
        var (shift, variance) = Shift(coat, row);
        return Within(row.Slopes.EomUm + shift, variance + ReadingVariance(row), coat);
    }

    /// <summary>Best value of the mean thickness of such coats. [µm], 0 or more</summary>
    internal double BestUm(CoatObservation coat)
    {
        var row = CoatColumns.Of(coat);
        return Math.Max(0, row.Slopes.EomUm + Shift(coat, row, withScreen: false).Mean);
    }

    /// <summary>Readings of a coat's very recipe in its shop.</summary>
    internal int ReadingsOf(CoatObservation coat) => LevelOf(Recipes, coat) is { } level ? readsOfRecipe[level] : 0;

    /// <summary>What one new reading's variance comes from: too few readings, and screens and gauge. [µm²]</summary>
    internal (double Model, double Reading) Variances(CoatObservation coat)
    {
        var row = CoatColumns.Of(coat);
        var model = Shift(coat, row, withScreen: false).Variance;
        return (model, Shift(coat, row).Variance + ReadingVariance(row) - model);
    }

    /// <summary>However well readings agreed, the next is known no better than a gauge reads. [µm²]</summary>
    private double ReadingVariance(CoatColumns row) => Math.Max(CoatSpreads.GaugeUm * CoatSpreads.GaugeUm, ResidualVariance * row.PlaceVariance);

    /// <summary>The mean thickness of such coats, without a screen's and a reading's own luck. [µm]</summary>
    public Estimate ExpectMean(CoatObservation coat)
    {
        var row = CoatColumns.Of(coat);
        var (shift, variance) = Shift(coat, row, withScreen: false);
        return Within(row.Slopes.EomUm + shift, variance, coat);
    }

    /// <summary>Standard deviation of one reading about its screen's own thickness, at the mean thickness of all readings. [µm]</summary>
    public Estimate ReadingSpreadUm
    {
        get
        {
            var (typical, freedom) = (CoatColumns.PlaceVarianceAt(Count == 0 ? CoatSpreads.UsualUm : typicalUm), CoatSpreads.ResidualFreedom + Count);
            var value = Math.Sqrt(ResidualVariance * typical);
            // Chi-squared's own spread: some 1 / root of twice the readings.
            var share = HalfWidth90 / Math.Sqrt(2 * freedom);
            return new Estimate(value, value * Math.Max(0.3, 1 - share), value * (1 + share), Count == 0 ? Estimates.Ground.CommonPractice : Estimates.Ground.Model);
        }
    }

    /// <summary>How much more or less each group lays than its like, at the mean thickness of all readings. [µm]</summary>
    public IReadOnlyList<CoatEffect> Effects()
    {
        if (fit is null)
            return [];
        return
        [
            .. from t in Enumerable.Range(0, Terms.Length)
               where !Terms[t].Known && t != Screens
               from level in levels[t]
               where level.Key is not Nameless
               select EffectOf(t, level.Key, level.Value),
        ];
    }

    private double ResidualVariance => fit?.ResidualVariance ?? 1;

    private CoatEffect EffectOf(int term, object key, int level)
    {
        var share = Terms[term].Name switch { "shop" => CoatSpreads.Shop, "operator" => CoatSpreads.Operator, "trough" => CoatSpreads.Trough, "recipe" => CoatSpreads.Recipe, "emulsion" => CoatSpreads.Emulsion, _ => CoatSpreads.Mesh };
        var (mean, variance) = fit!.Expect([], [.. Terms.Select((_, t) => ((int?)(t == term ? level : null), (IReadOnlyList<double>)[t == term ? share * typicalUm : 0]))]);
        return new CoatEffect(Terms[term].Name, NameOf(key), mean, Math.Sqrt(variance));
    }

    private (double Mean, double Variance) Shift(CoatObservation coat, CoatColumns row, bool withScreen = true)
    {
        var columns = Terms.Select((term, t) => (Level: LevelOf(t, coat), Column: t == Screens && !withScreen ? 0 : term.Column(row))).ToArray();
        if (fit is null)
            return (0, columns.Sum(c => c.Column * c.Column));
        var (mean, variance) = fit.Expect([], [.. columns.Select(c => (c.Level, (IReadOnlyList<double>)[c.Column]))]);
        // The balance itself at its learnt constants, not its slope: so that a coat never sinks by more strokes or solids.
        var straight = constants.Zip(row.Slopes.Constants, (deviations, move) => deviations * move).Sum();
        return (mean - straight + row.Slopes.WithConstants(constants) - row.Slopes.EomUm, variance);
    }

    private int? LevelOf(int term, CoatObservation coat) =>
        Terms[term].Level(coat) is { } key && levels[term].TryGetValue(key, out var level) ? level : null;

    private Estimate Within(double value, double variance, CoatObservation coat)
    {
        var half = HalfWidth90 * Math.Sqrt(variance);
        var at = Math.Max(0, value);
        return new Estimate(at, Math.Max(0, Math.Min(at, value - half)), Math.Max(at, value + half), Ground(coat));
    }

    /// <summary>Read here where this very recipe was; a model where other coats of the shop were; elsewhere where only other shops' were, and common practice where nothing was.</summary>
    private Ground Ground(CoatObservation coat) =>
        LevelOf(Recipes, coat) is not null ? Estimates.Ground.MeasuredHere
        : Count == 0 ? Estimates.Ground.CommonPractice
        : LevelOf(Shops, coat) is not null ? Estimates.Ground.Model : Estimates.Ground.MeasuredElsewhere;

    private static double NamelessVariance(CoatObservation coat, CoatColumns row) =>
        Terms.Where(term => term.Level(coat) is null).Sum(term => term.Column(row) * term.Column(row));

    private static RandomTerm TermOf(CoatTerm term, Dictionary<object, int> levels, IReadOnlyList<CoatRead> reads, CoatColumns[] rows)
    {
        var levelOfRow = new int[reads.Count];
        var column = new double[reads.Count];
        for (var i = 0; i < reads.Count; i++)
        {
            // What has no name has no effect to learn: its spread is in the row's own scatter. It stands within its shop, lest a nameless hand tie all shops together.
            var named = term.Level(reads[i].Coat);
            var key = named ?? new Nameless(reads[i].Coat.Shop);
            if (!levels.TryGetValue(key, out var level))
                levels[key] = level = levels.Count;
            (levelOfRow[i], column[i]) = (level, named is null ? 0 : term.Column(rows[i]));
        }

        return new RandomTerm(term.Name, levelOfRow, Math.Max(1, levels.Count), [column], term.Prior);
    }

    private static string StrokesKey(CoatObservation coat) => coat.Emulsion.Family == EmulsionFamily.CapillaryFilm ? "laid" :
        string.Concat(coat.Strokes.Select(stroke => $"{(stroke.AfterDrying ? "|" : string.Empty)}{(stroke.Side == StrokeSide.Print ? 'P' : 'S')}{(stroke.Scrape ? "-" : string.Empty)}"));

    private static string NameOf(object key) => key switch
    {
        (string shop, string name) => $"{shop}, {name}",
        (string shop, string emulsion, string mesh, string strokes) => $"{shop}, {emulsion} on {mesh}, {strokes}",
        _ => key.ToString()!,
    };

    private sealed record Nameless(string Shop);
}
