using Silkwright.Emulsion;
using Silkwright.Statistics.Mixed;

namespace Silkwright.Coating.Learning;

/// <summary>Which shop, operator, trough and so on each coat belongs to, numbered as they come.</summary>
internal sealed class CoatLevels
{
    public static readonly CoatTerm[] Terms =
    [
        new("shop", coat => coat.Shop, row => CoatSpreads.Shop * row.VaryingUm),
        new("operator", coat => coat.Operator is { } name ? (coat.Shop, name) : null, row => CoatSpreads.Operator * row.VaryingUm),
        new("trough", coat => coat.Trough.Id.Length > 0 ? (coat.Shop, coat.Trough.Id) : null, row => row.TroughShare * row.VaryingUm),
        new("recipe", coat => (coat.Shop, coat.Emulsion.Id, coat.Mesh.Fabric.Name, StrokesKey(coat)), row => CoatSpreads.Recipe * row.VaryingUm),
        new("screen", coat => coat.Screen is { } name ? (coat.Shop, name) : null, row => CoatSpreads.Screen * row.VaryingUm),
        new("emulsion", coat => coat.Emulsion.Id, row => row.EmulsionUm, Shared: true),
        new("mesh", coat => coat.Mesh.Fabric.Name, row => row.MeshUm, Shared: true),
        .. Enumerable.Range(0, LiquidCoat.SharedConstants).Select(k => new CoatTerm(LiquidCoat.SharedNames[k], _ => TheOne, row => row.Slopes.Constants[k], Shared: true, Known: true)),
    ];

    public const int Shops = 0;
    public const int Recipes = 3;
    public const int Screens = 4;

    /// <summary>Group of the balance's constants among the shared effects.</summary>
    public const string Constant = "constant";

    /// <summary>The one level of a constant.</summary>
    private const int TheOne = 0;

    private readonly Dictionary<object, int>[] levels;

    public CoatLevels() => levels = [.. Terms.Select(_ => new Dictionary<object, int>())];

    private CoatLevels(CoatLevels other) => levels = [.. other.levels.Select(known => new Dictionary<object, int>(known))];

    public CoatLevels Copy() => new(this);

    /// <summary>How many there are, those of rows without a name among them.</summary>
    public int Count(int term) => levels[term].Count;

    /// <summary>Those that have a name.</summary>
    public IEnumerable<(object Key, int Level)> Named(int term) => levels[term].Where(level => level.Key is not Nameless).Select(level => (level.Key, level.Value));

    /// <summary>A coat's level; none where it has no name, or one that no reading had.</summary>
    public int? Of(int term, CoatObservation coat) => Terms[term].Level(coat) is { } key && levels[term].TryGetValue(key, out var level) ? level : null;

    /// <summary>All effects that are the same in every shop.</summary>
    public IEnumerable<SharedEffect> Shared() =>
        from t in Enumerable.Range(0, Terms.Length) where Terms[t].Shared from key in levels[t].Keys select Terms[t].Known ? new SharedEffect(Constant, Terms[t].Name) : new SharedEffect(Terms[t].Name, (string)key);

    /// <summary>Where a shared effect stands; numbered where it is new.</summary>
    /// <exception cref="ArgumentException">There is no such effect.</exception>
    public (int Term, int Level) Place(SharedEffect effect)
    {
        var isConstant = effect.Group == Constant;
        var term = Array.FindIndex(Terms, term => term.Shared && term.Known == isConstant && term.Name == (isConstant ? effect.Name : effect.Group));
        if (term < 0)
            throw new ArgumentException($"No effect of all shops is called {effect.Group} {effect.Name}.", nameof(effect));
        object key = isConstant ? TheOne : effect.Name;
        if (!levels[term].TryGetValue(key, out var level))
            levels[term][key] = level = levels[term].Count;
        return (term, level);
    }

    /// <summary>The term as a mixed model has it.</summary>
    /// <param name="term">Which.</param>
    /// <param name="reads">The readings; their levels are numbered.</param>
    /// <param name="rows">Their rows.</param>
    /// <param name="prior">What is believed of its spread.</param>
    public RandomTerm TermOf(int term, IReadOnlyList<CoatRead> reads, CoatColumns[] rows, RatioPrior prior)
    {
        var levelOfRow = new int[reads.Count];
        var column = new double[reads.Count];
        for (var i = 0; i < reads.Count; i++)
            (levelOfRow[i], column[i]) = Placed(term, reads[i].Coat, rows[i]);
        return new RandomTerm(Terms[term].Name, levelOfRow, Math.Max(1, levels[term].Count), [column], prior, Terms[term].Shared);
    }

    /// <summary>One more reading as a row; levels that are new are numbered.</summary>
    public MixedRow RowOf(CoatRead read, CoatColumns row) => new(
        read.EomUm - row.Slopes.EomUm, [], [.. Terms.Select((_, t) => Placed(t, read.Coat, row)).Select(placed => (placed.Level, (IReadOnlyList<double>)[placed.Column]))], WeightOf(read.Coat, row));

    /// <summary>What a reading weighs: its place's variance, with the spread of all that it does not name. [1/µm²]</summary>
    public static double WeightOf(CoatObservation coat, CoatColumns row) =>
        1 / (row.PlaceVariance + Terms.Where(term => term.Level(coat) is null).Sum(term => term.Column(row) * term.Column(row)));

    public static string NameOf(object key) => key switch
    {
        (string shop, string name) => $"{shop}, {name}",
        (string shop, string emulsion, string mesh, string strokes) => $"{shop}, {emulsion} on {mesh}, {strokes}",
        _ => key.ToString()!,
    };

    /// <summary>What has no name has no effect to learn. It stands within its shop, lest a nameless hand tie all shops together.</summary>
    private (int Level, double Column) Placed(int term, CoatObservation coat, CoatColumns row)
    {
        var named = Terms[term].Level(coat);
        var key = named ?? new Nameless(coat.Shop);
        if (!levels[term].TryGetValue(key, out var level))
            levels[term][key] = level = levels[term].Count;
        return (level, named is null ? 0 : Terms[term].Column(row));
    }

    private static string StrokesKey(CoatObservation coat) => coat.Emulsion.Family == EmulsionFamily.CapillaryFilm
        ? "laid"
        : string.Concat(coat.Strokes.Select(stroke => $"{(stroke.AfterDrying ? "|" : string.Empty)}{(stroke.Side == StrokeSide.Print ? 'P' : 'S')}{(stroke.Scrape ? "-" : string.Empty)}"));

    private sealed record Nameless(string Shop);
}
