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

    /// <summary>Strokes that tell recipes apart; nobody lays more.</summary>
    private const int LongestKey = 100;

    /// <summary>The one level of a constant.</summary>
    private const int TheOne = 0;

    /// <summary>Levels that copies share, and this one's own beyond them.</summary>
    private readonly Dictionary<object, int>[] shared;
    private readonly Dictionary<object, int>[] own;

    public CoatLevels() => (shared, own) = (Empty(), Empty());

    private CoatLevels(Dictionary<object, int>[] shared, Dictionary<object, int>[] own) => (this.shared, this.own) = (shared, own);

    /// <summary>The same levels, none of them to be numbered anew: copies of it are cheap.</summary>
    public CoatLevels Settled() => new([.. Enumerable.Range(0, Terms.Length).Select(t => shared[t].Count == 0 ? own[t] : new Dictionary<object, int>(shared[t].Concat(own[t])))], Empty());

    public CoatLevels Copy() => new(shared, [.. own.Select(known => new Dictionary<object, int>(known))]);

    /// <summary>How many there are, those of rows without a name among them.</summary>
    public int Count(int term) => shared[term].Count + own[term].Count;

    /// <summary>Those that have a name.</summary>
    public IEnumerable<(object Key, int Level)> Named(int term) => shared[term].Concat(own[term]).Where(level => level.Key is not Nameless).Select(level => (level.Key, level.Value));

    /// <summary>A coat's level; none where it has no name, or one that no reading had.</summary>
    public int? Of(int term, CoatObservation coat) => Terms[term].Level(coat) is { } key && (shared[term].TryGetValue(key, out var level) || own[term].TryGetValue(key, out level)) ? level : null;

    /// <summary>All effects that are the same in every shop.</summary>
    public IEnumerable<SharedEffect> Shared() =>
        from t in Enumerable.Range(0, Terms.Length) where Terms[t].Shared from key in shared[t].Keys.Concat(own[t].Keys) select Terms[t].Known ? new SharedEffect(Constant, Terms[t].Name) : new SharedEffect(Terms[t].Name, (string)key);

    /// <summary>Where a shared effect stands; numbered where it is new.</summary>
    /// <exception cref="ArgumentException">There is no such effect.</exception>
    public (int Term, int Level) Place(SharedEffect effect)
    {
        var isConstant = effect.Group == Constant;
        var term = Array.FindIndex(Terms, term => term.Shared && term.Known == isConstant && term.Name == (isConstant ? effect.Name : effect.Group));
        if (term < 0)
            throw new ArgumentException($"No effect of all shops is called {effect.Group} {effect.Name}.", nameof(effect));
        return (term, Number(term, isConstant ? TheOne : effect.Name));
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
        return new RandomTerm(Terms[term].Name, levelOfRow, Math.Max(1, Count(term)), [column], prior, Terms[term].Shared);
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
        return (Number(term, named ?? new Nameless(coat.Shop)), named is null ? 0 : Terms[term].Column(row));
    }

    private int Number(int term, object key)
    {
        if (!shared[term].TryGetValue(key, out var level) && !own[term].TryGetValue(key, out level))
            own[term][key] = level = Count(term);
        return level;
    }

    private static Dictionary<object, int>[] Empty() => [.. Terms.Select(_ => new Dictionary<object, int>())];

    internal static string StrokesKey(CoatObservation coat)
    {
        if (coat.Emulsion.Family == EmulsionFamily.CapillaryFilm)
            return "laid";
        Span<char> key = stackalloc char[3 * Math.Min(coat.Strokes.Count, LongestKey)];
        var at = 0;
        foreach (var stroke in coat.Strokes.Take(LongestKey))
        {
            if (stroke.AfterDrying)
                key[at++] = '|';
            key[at++] = stroke.Side == StrokeSide.Print ? 'P' : 'S';
            if (stroke.Scrape)
                key[at++] = '-';
        }

        return new string(key[..at]);
    }

    private sealed record Nameless(string Shop);
}
