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
    /// <summary>Spreads are learnt from no more readings than about this many: more of them tell spreads no better, and take long.</summary>
    private const int EnoughForSpreads = 10_000;

    /// <summary>A reading tells this share of its own fit at most: what nothing else speaks of stays finite.</summary>
    private const double LeastLeft = 1e-3;

    private readonly IReadOnlyList<CoatRead> reads;
    private readonly CoatRead[] added = [];
    private readonly CoatExperience? elsewhere;
    private readonly MixedFit? fit;
    private readonly CoatLevels levels;
    private readonly double typicalUm;

    /// <summary>How far each of the balance's constants was drawn, in standard deviations of what is believed of it.</summary>
    private readonly double[] constants = [];

    private CoatHierarchy(IReadOnlyList<CoatRead> reads, CoatExperience? elsewhere, IReadOnlyList<double>? ratios, CancellationToken cancel)
    {
        (this.reads, this.elsewhere, levels) = (reads, elsewhere, new CoatLevels());
        if (reads.Count == 0 && elsewhere is null)
            return;
        var told = elsewhere is null ? null : new EffectInformation([.. elsewhere.Effects.Select(levels.Place)], elsewhere.Precision, elsewhere.Pull, elsewhere.Squares, elsewhere.Readings);
        var shapes = new Dictionary<CoatShape, CoatColumns>();
        var rows = reads.Select(RowOf).ToArray();
        typicalUm = rows.Select(row => row.VaryingUm).DefaultIfEmpty(CoatSpreads.UsualUm).Average();
        fit = MixedFit.Of(
            new MixedModel
            {
                Response = [.. reads.Zip(rows, (read, row) => read.EomUm - row.Slopes.EomUm)],
                Fixed = [],
                Random = [.. Enumerable.Range(0, CoatLevels.Terms.Length).Select(t => levels.TermOf(t, reads, rows, ratios is null ? Believed(CoatLevels.Terms[t]) : new RatioPrior(ratios[t])))],
                Weights = [.. reads.Zip(rows, (read, row) => CoatLevels.WeightOf(read.Coat, row))],
                Residual = new ResidualPrior(1, CoatSpreads.ResidualFreedom),
                Elsewhere = told,
            },
            cancel);
        constants = ConstantsOf(fit);
        levels = levels.Settled();

        RatioPrior Believed(CoatTerm term) => elsewhere?.Believed(term.Name, term.Prior) ?? term.Prior;

        CoatColumns RowOf(CoatRead read)
        {
            var shape = CoatShape.Of(read.Coat);
            return shapes.TryGetValue(shape, out var row) ? row : shapes[shape] = CoatColumns.Of(read.Coat);
        }
    }

    private CoatHierarchy(CoatHierarchy before, CoatRead read, CoatColumns row, CoatLevels levels, MixedFit fit)
    {
        (reads, added, elsewhere, this.levels, this.fit, constants) = (before.reads, [.. before.added, read], before.elsewhere, levels, fit, ConstantsOf(fit));
        typicalUm = before.typicalUm + ((row.VaryingUm - before.typicalUm) / Count);
    }

    private IEnumerable<CoatRead> All => reads.Concat(added);

    /// <summary>Readings learnt from.</summary>
    public int Count => reads.Count + added.Length;

    /// <summary>What other shops' readings taught, where it was brought in.</summary>
    public CoatExperience? Elsewhere => elsewhere;

    /// <summary>Neither a reading nor anybody's experience: the balance alone.</summary>
    public bool KnowsNothing => fit is null;

    /// <summary>Learns.</summary>
    /// <param name="reads">In any order; none leaves the balance alone.</param>
    /// <param name="elsewhere">What readings of other shops taught; none of these may be among them.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coat's strokes or edge make no sense, or a reading is no number.</exception>
    public static CoatHierarchy Of(IReadOnlyList<CoatRead> reads, CoatExperience? elsewhere = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(reads);
        if (reads.FirstOrDefault(read => !double.IsFinite(read.EomUm)) is { } none)
            throw new ArgumentOutOfRangeException(nameof(reads), none.EomUm, "A reading must be a number.");
        return new CoatHierarchy(reads, elsewhere, reads.Count > 2 * EnoughForSpreads ? new CoatHierarchy(ForSpreads(reads), elsewhere, null, cancel).Ratios() : null, cancel);
    }

    /// <summary>What its own readings teach of any shop's coats.</summary>
    /// <exception cref="InvalidOperationException">There are no readings, or others' experience is in it already.</exception>
    internal CoatExperience Experience() => fit is not null && elsewhere is null
        ? CoatExperience.Of(fit, levels, [.. All])
        : throw new InvalidOperationException("Experience is made of readings alone.");

    /// <summary>Where an effect of all shops lies off what is believed of it, and how surely, in standard deviations of that belief.</summary>
    internal (double Deviations, double StandardError) Shared(SharedEffect effect)
    {
        var (term, level) = levels.Place(effect);
        var (mean, variance) = fit!.Expect([], [.. CoatLevels.Terms.Select((_, t) => ((int?)(t == term ? level : null), (IReadOnlyList<double>)[t == term ? 1 : 0]))]);
        return (mean, Math.Sqrt(variance));
    }

    /// <summary>With one reading more and the spreads kept: as all readings would tell it, by the work of its shop alone unless it brings a new emulsion or mesh.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The coat's strokes or edge make no sense, or the reading is no number.</exception>
    public CoatHierarchy With(CoatRead read)
    {
        ArgumentNullException.ThrowIfNull(read);
        if (!double.IsFinite(read.EomUm))
            throw new ArgumentOutOfRangeException(nameof(read), read.EomUm, "A reading must be a number.");
        var (row, grown) = (CoatColumns.Of(read.Coat), levels.Copy());
        var added = grown.RowOf(read, row);
        return fit is not null && fit.Takes(added) ? new CoatHierarchy(this, read, row, grown, fit.With(added)) : new CoatHierarchy([.. All, read], elsewhere, Ratios(), default);
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
    internal int ReadingsOf(CoatObservation coat) => levels.Of(CoatLevels.Recipes, coat) is { } recipe ? All.Count(read => read.Coat.Shop == coat.Shop && levels.Of(CoatLevels.Recipes, read.Coat) == recipe) : 0;

    /// <summary>Readings of a shop.</summary>
    internal int ReadingsIn(string shop) => All.Count(read => read.Coat.Shop == shop);

    /// <summary>What one new reading's variance comes from: too few readings, its screen, and place and gauge. [µm²]</summary>
    internal (double Model, double Screen, double Reading) Variances(CoatObservation coat)
    {
        var row = CoatColumns.Of(coat);
        var model = Shift(coat, row, withScreen: false).Variance;
        return (model, Shift(coat, row).Variance - model, ReadingVariance(row));
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
            var (typical, freedom) = (CoatColumns.PlaceVarianceAt(KnowsNothing ? CoatSpreads.UsualUm : typicalUm), CoatSpreads.ResidualFreedom + Count + (elsewhere?.Readings ?? 0));
            var value = Math.Sqrt(ResidualVariance * typical);
            // Chi-squared's own spread: some 1 / root of twice the readings.
            var share = Estimate.UsualHalfWidth / Math.Sqrt(2 * freedom);
            return new Estimate(value, value * Math.Max(0.3, 1 - share), value * (1 + share), KnowsNothing ? Estimates.Ground.CommonPractice : Count == 0 ? Estimates.Ground.MeasuredElsewhere : Estimates.Ground.Model);
        }
    }

    /// <summary>How much more or less each group lays than its like, at the mean thickness of all readings. [µm]</summary>
    public IReadOnlyList<CoatEffect> Effects() => fit is null ? [] : GroupEffects.Of(fit, levels, Rows(), typicalUm);

    /// <summary>The latest readings, each beside what all the others alone say of it.</summary>
    /// <param name="most">As many at most.</param>
    public IReadOnlyList<(CoatRead Read, Estimate Expected)> Held(int most) => [.. All.TakeLast(most).Select(read => (read, HeldOut(read)))];

    /// <summary>Over what is believed of it. [1]</summary>
    internal double ResidualVariance => fit?.ResidualVariance ?? 1;

    /// <summary>
    /// What the others say of a reading, the spreads kept: taken out of normal equations, a row of leverage h leaves its residual over 1 − h, and what is not known of it
    /// over 1 − h too (R. D. Cook and S. Weisberg, Residuals and Influence in Regression, 1982, 2.2; from memory).
    /// </summary>
    private Estimate HeldOut(CoatRead read)
    {
        var row = CoatColumns.Of(read.Coat);
        var known = levels.RowOf(read, row);
        var variance = fit!.Expect([], [.. known.Random.Select(term => ((int?)term.Level, term.Columns))]).Variance;
        var scatter = ResidualVariance / known.Weight;
        var left = Math.Max(LeastLeft, 1 - (variance / scatter));
        var at = row.Slopes.EomUm + Shift(read.Coat, row).Mean;
        return Within(read.EomUm - ((read.EomUm - at) / left), (variance / left) + Math.Max(CoatSpreads.GaugeUm * CoatSpreads.GaugeUm, scatter), read.Coat);
    }

    private IEnumerable<MixedRow> Rows()
    {
        var shapes = new Dictionary<CoatShape, CoatColumns>();
        foreach (var read in All)
        {
            var shape = CoatShape.Of(read.Coat);
            if (!shapes.TryGetValue(shape, out var row))
                shapes[shape] = row = CoatColumns.Of(read.Coat);
            yield return levels.RowOf(read, row);
        }
    }

    /// <summary>Ratio of each group's spread to what is believed of it; 1 where nothing was read.</summary>
    private double[] Ratios() => [.. Enumerable.Range(0, CoatLevels.Terms.Length).Select(t => fit is null ? 1 : Math.Sqrt(fit.Covariance(t, 0, 0) / fit.ResidualVariance))];

    private static double[] ConstantsOf(MixedFit fit) =>
        [.. Enumerable.Range(CoatLevels.Terms.Length - LiquidCoat.SharedConstants, LiquidCoat.SharedConstants).Select(t => fit.Effects(t, 0)[0])];

    /// <summary>All readings of every so many shops, by name, so that no order of the readings matters.</summary>
    private static CoatRead[] ForSpreads(IReadOnlyList<CoatRead> reads)
    {
        var shops = reads.GroupBy(read => read.Coat.Shop).OrderBy(shop => shop.Key, StringComparer.Ordinal).ToArray();
        var every = (reads.Count + EnoughForSpreads - 1) / EnoughForSpreads;
        CoatRead[] some = [.. shops.Where((_, i) => i % every == 0).SelectMany(shop => shop)];
        return some.Length < reads.Count / 2 ? some : [.. shops.SelectMany(shop => shop.Where((_, i) => i % every == 0))];
    }

    private (double Mean, double Variance) Shift(CoatObservation coat, CoatColumns row, bool withScreen = true)
    {
        var columns = CoatLevels.Terms.Select((term, t) => (Level: levels.Of(t, coat), Column: t == CoatLevels.Screens && !withScreen ? 0 : term.Column(row))).ToArray();
        if (fit is null)
            return (0, columns.Sum(c => c.Column * c.Column));
        var (mean, variance) = fit.Expect([], [.. columns.Select(c => (c.Level, (IReadOnlyList<double>)[c.Column]))]);
        // The balance itself at its learnt constants, not its slope: so that a coat never sinks by more strokes or solids.
        var straight = constants.Zip(row.Slopes.Constants, (deviations, move) => deviations * move).Sum();
        return (mean - straight + row.Slopes.WithConstants(constants) - row.Slopes.EomUm, variance);
    }

    private Estimate Within(double value, double variance, CoatObservation coat)
    {
        var half = Estimate.UsualHalfWidth * Math.Sqrt(variance);
        var at = Math.Max(0, value);
        return new Estimate(at, Math.Max(0, Math.Min(at, value - half)), Math.Max(at, value + half), Ground(coat));
    }

    /// <summary>Read here where this very recipe was; a model where other coats of the shop were; elsewhere where only other shops' were, and common practice where nothing was.</summary>
    private Ground Ground(CoatObservation coat) =>
        levels.Of(CoatLevels.Recipes, coat) is not null ? Estimates.Ground.MeasuredHere
        : KnowsNothing ? Estimates.Ground.CommonPractice
        : levels.Of(CoatLevels.Shops, coat) is not null ? Estimates.Ground.Model : Estimates.Ground.MeasuredElsewhere;
}
