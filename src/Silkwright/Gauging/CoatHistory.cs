using MathNet.Numerics.Distributions;
using Silkwright.Estimates;
using Silkwright.Statistics;

namespace Silkwright.Gauging;

/// <summary>A shop's coats along the days: charts by shop, operator, trough and emulsion, and who or what coats otherwise than the rest.</summary>
/// <remarks>docs/engines/gauging.md, "The chart".</remarks>
public sealed record CoatHistory
{
    /// <summary>Readings that set a level. Common practice wants twenty; no shop has them, so the limits carry what so few leave open.</summary>
    public const int UsualLevelReadings = 6;

    /// <summary>Before a reading, levels are thought of as this wide, and changes as this large. Common practice. [standard deviations of a reading]</summary>
    private const double LevelRatio = 10;
    private const double ShiftRatio = 2;

    /// <summary>What a reading of one coat scatters by before the shop's own tell, and the readings' worth of that belief. Common practice. [µm]</summary>
    private const double UsualDeviationUm = 1.2;
    private const double UsualFreedom = 2;

    private const double Tail = (100 - Estimate.UsualCoverPercent) / 200;
    private const int MostReadings = 400;
    private const int LeastToCompare = 2;

    public required IReadOnlyList<CoatChart> Charts { get; init; }

    /// <summary>The likeliest first.</summary>
    public required IReadOnlyList<CoatDifference> Differences { get; init; }

    public required IReadOnlyList<Note> Notes { get; init; }

    /// <param name="readings">In any order.</param>
    public static CoatHistory Of(IReadOnlyList<CoatedReading> readings)
    {
        CoatedReading[] ordered = [.. readings.OrderBy(reading => reading.On).TakeLast(MostReadings)];
        CoatChart[] charts = [.. Groups(ordered, withShop: true).Select(group => ChartOf(group.Grouping, group.Name, group.Readings)).OfType<CoatChart>()];
        return new CoatHistory
        {
            Charts = charts,
            Differences = [.. Groups(ordered, withShop: false).Select(group => Difference(ordered, group)).OfType<CoatDifference>().OrderByDescending(difference => difference.ChancePercent)],
            Notes = [.. NotesOn(readings.Count, ordered, charts)],
        };
    }

    /// <summary>The value of a reading that a grouping goes by.</summary>
    internal static string? NameIn(ChartGrouping grouping, CoatedReading reading) => grouping switch
    {
        ChartGrouping.Operator => reading.Operator,
        ChartGrouping.Trough => reading.Trough,
        ChartGrouping.Emulsion => reading.Emulsion,
        _ => "",
    };

    private static IEnumerable<(ChartGrouping Grouping, string Name, CoatedReading[] Readings)> Groups(CoatedReading[] ordered, bool withShop) =>
        from grouping in Enum.GetValues<ChartGrouping>()
        where withShop || grouping != ChartGrouping.Shop
        from named in ordered.Where(reading => NameIn(grouping, reading) is not null).GroupBy(reading => NameIn(grouping, reading)!, StringComparer.OrdinalIgnoreCase)
        // A chart of everything under another name tells nothing new.
        where !withShop || grouping == ChartGrouping.Shop || named.Count() < ordered.Length
        select (grouping, named.Key, named.ToArray());

    private static CoatChart? ChartOf(ChartGrouping grouping, string name, CoatedReading[] readings)
    {
        // The level of a recipe is that of its first readings: later ones are what is asked about.
        var levels = readings.GroupBy(Recipe).Where(recipe => recipe.Count() > 1)
            .ToDictionary(recipe => recipe.Key, recipe => (Count: Math.Min(UsualLevelReadings, Math.Max(1, recipe.Count() / 2)), All: recipe.ToArray()));
        CoatedReading[] told = [.. readings.Where(reading => levels.ContainsKey(Recipe(reading)))];
        if (told.Length < 3)
            return null;
        var centres = levels.ToDictionary(level => level.Key, level => level.Value.All.Take(level.Value.Count).Average(reading => reading.EomUm));
        double[] off = [.. told.Select(reading => reading.EomUm - centres[Recipe(reading)])];
        var level = Math.Min(UsualLevelReadings, told.Length / 2);
        var (variance, freedom) = Scatter([.. levels.Values.Select(recipe => recipe.All)]);
        var deviation = Math.Sqrt(variance);
        // Student's t in the normal's place: the deviation is an estimate too.
        var limit = StudentT.InvCDF(0, 1, freedom, Normal.CDF(0, 1, EwmaChart.UsualLimit));
        var centre = off.Take(level).Average();
        var points = EwmaChart.Of(off[level..], centre, deviation, limit: limit, centreError: deviation / Math.Sqrt(level));
        var change = told.Length > level ? LevelChange.OfUnknownDeviation(off, LevelRatio, ShiftRatio, UsualDeviationUm * UsualDeviationUm, UsualFreedom) : null;
        var reach = change is null ? 0 : StudentT.InvCDF(0, 1, UsualFreedom + off.Length, 1 - Tail) * change.ShiftDeviation;
        return new CoatChart
        {
            Grouping = grouping,
            Name = name,
            Readings = told,
            OffUm = off,
            LevelReadings = level,
            DeviationUm = deviation,
            Points = points,
            SignalOn = points.Select((point, i) => (point, i)).Where(pair => pair.point.IsOut).Select(pair => (DateOnly?)told[level + pair.i].On).FirstOrDefault(),
            Since = change is null ? null : told[change.At].On,
            ChangeUm = change is null ? null : new Estimate(change.Shift, change.Shift - reach, change.Shift + reach, Ground.MeasuredHere),
            ChancePercent = change is null ? null : 100 * change.Chance,
        };
    }

    private static CoatDifference? Difference(CoatedReading[] ordered, (ChartGrouping Grouping, string Name, CoatedReading[] Readings) group)
    {
        var own = group.Readings.ToHashSet(ReferenceEqualityComparer.Instance);
        // An emulsion is part of a recipe of its own, so it is held against others of the same mesh and strokes.
        Func<CoatedReading, string> recipe = group.Grouping == ChartGrouping.Emulsion ? reading => reading.Recipe : Recipe;
        var others = ordered.Where(reading => !own.Contains(reading) && NameIn(group.Grouping, reading) is not null).GroupBy(recipe).ToDictionary(same => same.Key, same => same.ToArray());
        CoatedReading[] told = [.. group.Readings.Where(reading => others.ContainsKey(recipe(reading)))];
        CoatedReading[] against = [.. told.Select(recipe).Distinct().SelectMany(key => others[key])];
        if (told.Length < LeastToCompare || against.Length < LeastToCompare)
            return null;
        var means = told.Select(recipe).Distinct().ToDictionary(key => key, key => others[key].Average(reading => reading.EomUm));
        double[] values = [.. against.Concat(told).Select(reading => reading.EomUm - means[recipe(reading)])];
        var change = LevelChange.OfUnknownDeviation(values, LevelRatio, ShiftRatio, UsualDeviationUm * UsualDeviationUm, UsualFreedom, against.Length);
        var reach = StudentT.InvCDF(0, 1, UsualFreedom + values.Length, 1 - Tail) * change.ShiftDeviation;
        var isNew = against.Count(reading => reading.On < told[0].On) >= LeastToCompare;
        return new CoatDifference(
            group.Grouping, group.Name, new Estimate(change.Shift, change.Shift - reach, change.Shift + reach, Ground.MeasuredHere), 100 * change.Chance, told.Length,
            isNew ? told[0].On : null, [.. AlsoIs(group.Grouping, told, against)]);
    }

    /// <summary>Other groupings whose names do not overlap between the two sides.</summary>
    private static IEnumerable<string> AlsoIs(ChartGrouping grouping, CoatedReading[] told, CoatedReading[] against)
    {
        foreach (var other in Enum.GetValues<ChartGrouping>().Where(other => other != grouping && other != ChartGrouping.Shop))
        {
            string[] own = [.. told.Select(reading => NameIn(other, reading)).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase)];
            if (own.Length > 0 && !own.Intersect(against.Select(reading => NameIn(other, reading)).OfType<string>(), StringComparer.OrdinalIgnoreCase).Any())
                yield return $"{(other == ChartGrouping.Emulsion ? "emulsion" : other.ToString().ToLowerInvariant())} {string.Join(", ", own)}";
        }
    }

    /// <summary>Variance of a reading from differences of neighbours of one recipe, which a lasting change does not swell, with what is usual before any.</summary>
    /// <remarks>Half the mean square of successive differences: J. von Neumann and others, Ann. Math. Stat. 12 (1941) 153. It has about two thirds of the degrees of freedom.</remarks>
    private static (double Variance, double Freedom) Scatter(CoatedReading[][] recipes)
    {
        double sum = UsualFreedom * UsualDeviationUm * UsualDeviationUm, freedom = UsualFreedom;
        foreach (var recipe in recipes)
        {
            for (var i = 1; i < recipe.Length; i++)
            {
                var step = recipe[i].EomUm - recipe[i - 1].EomUm;
                sum += 2.0 / 3 * step * step / 2;
                freedom += 2.0 / 3;
            }
        }

        return (sum / freedom, freedom);
    }

    private static string Recipe(CoatedReading reading) => $"{reading.Emulsion}\n{reading.Recipe}";

    private static IEnumerable<Note> NotesOn(int given, CoatedReading[] ordered, CoatChart[] charts)
    {
        if (given > ordered.Length)
            yield return new Note($"The latest {MostReadings} of {given} readings.");
        if (charts.Length == 0)
            yield return new Note("A chart needs three readings of the same emulsion, mesh and strokes.");
        yield return new Note("Only readings of one emulsion, mesh and strokes are held against each other; each recipe's first readings set its level.");
        yield return new Note($"Until a shop has readings enough, a reading is thought to scatter by {UsualDeviationUm} µm.", Ground.CommonPractice);
        if (ordered.Any(reading => reading.Operator is null || reading.Trough is null))
            yield return new Note("Readings without an operator or a trough count for the shop alone.");
    }
}
