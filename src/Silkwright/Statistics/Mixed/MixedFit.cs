namespace Silkwright.Statistics.Mixed;

/// <summary>A linear mixed model fitted by restricted maximum likelihood.</summary>
/// <remarks>
/// Held against R's lme4 on balanced, unbalanced and near-singular data in the tests. A variance may come out as 0: the data then show no more difference
/// between levels than the rows' own scatter explains.
/// </remarks>
public sealed class MixedFit
{
    /// <summary>The search ends where a step promises to bring the criterion down by less: some 3e-5 of a standard error.</summary>
    private const double Settled = 1e-9;
    private const int MostSteps = 400;

    private readonly CrossProducts products;
    private readonly RelativeFactors factors;
    private readonly Factored factored;
    private readonly double[][] sizes;
    private readonly RatioSearch search;

    private MixedFit(double[][] sizes, RatioSearch search, CrossProducts products, RelativeFactors factors, Factored factored) =>
        (this.sizes, this.search, this.products, this.factors, this.factored) = (sizes, search, products, factors, factored);

    /// <summary>−2 log of the restricted likelihood.</summary>
    public double Criterion => factored.Criterion;

    /// <summary>Variance of a row of weight 1.</summary>
    public double ResidualVariance => factored.ResidualVariance;

    /// <summary>Estimates of the fixed effects.</summary>
    public IReadOnlyList<double> Fixed => factored.BorderSolution[products.BorderEffects..];

    /// <summary>Covariance of two fixed effects' estimates, the variances taken as known.</summary>
    public double FixedCovariance(int one, int other) =>
        ResidualVariance * factored.BorderInverse[((products.BorderEffects + one) * (products.Border - 1)) + products.BorderEffects + other];

    /// <summary>Covariance of two effects of a term's level.</summary>
    public double Covariance(int term, int one, int other)
    {
        var sum = 0.0;
        for (var c = 0; c <= Math.Min(one, other); c++)
            sum += factors[term, one, c] * factors[term, other, c];
        return ResidualVariance * sum / (sizes[term][one] * sizes[term][other]);
    }

    /// <summary>The best guess of each of a level's effects, drawn towards 0 as far as its rows are few.</summary>
    public IReadOnlyList<double> Effects(int term, int level)
    {
        var unit = UnitEffects(term, level);
        var effects = factors.Effects(term, unit);
        for (var i = 0; i < effects.Length; i++)
            effects[i] /= sizes[term][i];
        return effects;
    }

    /// <summary>What a new row is expected to be, its own residual left out, and how surely.</summary>
    /// <param name="fixedRow">The row's fixed columns.</param>
    /// <param name="random">For each term the row's level, or none for one that no row had, and its columns.</param>
    /// <returns>Mean, and variance with the variance components taken as known.</returns>
    public (double Mean, double Variance) Expect(IReadOnlyList<double> fixedRow, IReadOnlyList<(int? Level, IReadOnlyList<double> Columns)> random)
    {
        ArgumentNullException.ThrowIfNull(fixedRow);
        ArgumentNullException.ThrowIfNull(random);
        var border = new double[products.Border - 1];
        for (var i = 0; i < fixedRow.Count; i++)
            border[products.BorderEffects + i] = fixedRow[i];
        var within = new Dictionary<int, double[]>();
        var apart = 0.0;
        for (var t = 0; t < random.Count; t++)
        {
            var unit = factors.Unit(t, [.. random[t].Columns.Select((value, c) => value / sizes[t][c])]);
            if (random[t].Level is not { } level || (!products.IsAcross(t) && products.BlockOfLevel[t][level] < 0))
            {
                apart += unit.Sum(u => u * u);
                continue;
            }

            var at = products.IsAcross(t)
                ? border.AsSpan(products.BorderOffsets[t] + (level * unit.Length))
                : Within(products.BlockOfLevel[t][level]).AsSpan(products.OffsetOfLevel[t][level]);
            unit.CopyTo(at);
        }

        var mean = Factor.Dot(border, factored.BorderSolution);
        foreach (var (block, x) in within)
        {
            mean += Factor.Dot(x, factored.Effects(block));
            apart += Factor.Dot(x, factored.Solve(block, x));
            factored.TakeFollowing(block, x, border);
        }

        return (mean, ResidualVariance * (apart + factored.BorderSquare(border)));

        double[] Within(int block)
        {
            if (!within.TryGetValue(block, out var x))
                within[block] = x = new double[products.Blocks[block].Size];
            return x;
        }
    }

    /// <summary>Fits a model.</summary>
    /// <param name="model">The model.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">The model makes no sense, or a fixed effect cannot be told from the others.</exception>
    public static MixedFit Of(MixedModel model, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(model);
        model.Check();
        var sizes = model.Random.Select(term => term.Columns.Select(Size).ToArray()).ToArray();
        var products = new CrossProducts(model with { Random = [.. model.Random.Select((term, t) => Scaled(term, sizes[t]))], Elsewhere = model.Elsewhere is { } told ? Scaled(told, sizes) : null });
        var search = new RatioSearch(model.Random, sizes);
        var found = search.Start.Count == 0 ? [] : QuasiNewton.Minimum(
            at =>
            {
                cancel.ThrowIfCancellationRequested();
                if (search.Belief(at) is not { } belief)
                    return new QuasiNewton.Place(double.PositiveInfinity, () => at);
                var factors = search.Factors(at);
                var here = new Factored(products, factors);
                return new QuasiNewton.Place(here.Criterion + belief, () => search.Slope(new CriterionSlope(products, factors, here).Of(), at));
            },
            search.Start,
            bend: 1,
            Settled,
            MostSteps);
        var best = search.Factors(found);
        return new MixedFit(sizes, search, products, best, new Factored(products, best));
    }

    /// <summary>The fit with one row more and the ratios of the spreads kept: as all rows would give it, by the work of one block.</summary>
    /// <exception cref="ArgumentException">The row's sizes are others, or it brings a new level of a term that crosses the blocks: fit all rows.</exception>
    public MixedFit With(MixedRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        if (row.Random.Count != sizes.Length || row.Fixed.Count != products.FixedCount || !(row.Weight > 0) || !double.IsFinite(row.Weight) || !double.IsFinite(row.Response))
            throw new ArgumentException("A row has the model's fixed columns, a level of every term and numbers alone.", nameof(row));
        var scaled = row with { Random = [.. row.Random.Select((term, t) => (term.Level, (IReadOnlyList<double>)[.. term.Columns.Select((value, c) => value / sizes[t][c])]))] };
        var changed = products.With(scaled);
        return new MixedFit(sizes, search, changed, factors, factored.With(changed, row.Random[products.Nesting.Within[0]].Level));
    }

    /// <summary>Whether <see cref="With"/> takes a row.</summary>
    public bool Takes(MixedRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return products.Takes(row);
    }

    /// <summary>What all rows, those elsewhere among them, tell of effects of crossing terms, their own beliefs left out.</summary>
    /// <param name="effects">Of terms whose levels have one effect.</param>
    /// <exception cref="ArgumentException">One is of a term that does not cross the others, or the model has fixed effects.</exception>
    public EffectInformation Tell(IReadOnlyList<(int Term, int Level)> effects)
    {
        ArgumentNullException.ThrowIfNull(effects);
        if (products.FixedCount > 0 || effects.Any(effect => !products.IsAcross(effect.Term) || factors.Widths[effect.Term] != 1))
            throw new ArgumentException("What rows tell can be asked of single effects that cross the others, in a model without fixed ones.", nameof(effects));
        var raw = new Factored(products, factors.WithUnit(products.Nesting.Across));
        int[] at = [.. effects.Select(effect => products.BorderOffsets[effect.Term] + effect.Level)];
        double[] size = [.. effects.Select(effect => sizes[effect.Term][0])];
        var y = products.Border - 1;
        return new EffectInformation(
            effects,
            [.. from i in Enumerable.Range(0, at.Length) from j in Enumerable.Range(0, at.Length) select raw.Marginal(at[i], at[j]) * (size[i] * size[j])],
            [.. at.Select((column, i) => raw.Marginal(column, y) * size[i])],
            raw.Marginal(y, y),
            products.Freedom - products.BelievedFreedom + products.FixedCount);
    }

    /// <summary>What the rows alone tell of the ratios of the terms that something is believed of; 0 of those that are known.</summary>
    public IReadOnlyList<RatioTold> TellRatios()
    {
        var at = search.At(factors);
        var variances = RatioTelling.LogVariances(place => search.Slope(SlopeAt(search.Factors(place)), place), at);
        return search.Told(at, variances);

        double[] SlopeAt(RelativeFactors place) => new CriterionSlope(products, place, new Factored(products, place)).Of();
    }

    private double[] UnitEffects(int term, int level)
    {
        var q = factors.Widths[term];
        if (products.IsAcross(term))
            return factored.BorderSolution[(products.BorderOffsets[term] + (level * q))..][..q];
        var block = products.BlockOfLevel[term][level];
        return block < 0 ? new double[q] : factored.Effects(block)[products.OffsetOfLevel[term][level]..][..q];
    }

    /// <summary>Root mean square of a column, so that all are of one size to the search.</summary>
    private static double Size(IReadOnlyList<double> column)
    {
        var size = Math.Sqrt(column.Sum(value => value * value) / column.Count);
        return size > 0 ? size : 1;
    }

    private static EffectInformation Scaled(EffectInformation told, double[][] sizes)
    {
        double[] size = [.. told.Effects.Select(effect => sizes[effect.Term][0])];
        return told with
        {
            Precision = [.. told.Precision.Select((value, k) => value / (size[k / size.Length] * size[k % size.Length]))],
            Pull = [.. told.Pull.Select((value, i) => value / size[i])],
        };
    }

    private static RandomTerm Scaled(RandomTerm term, double[] sizes) =>
        term with { Columns = [.. term.Columns.Select((column, c) => (IReadOnlyList<double>)[.. column.Select(value => value / sizes[c])])] };
}
