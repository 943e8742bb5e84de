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

    private readonly MixedModel model;
    private readonly CrossProducts products;
    private readonly RelativeFactors factors;
    private readonly Factored factored;
    private readonly double[][] sizes;

    private MixedFit(MixedModel model, double[][] sizes, CrossProducts products, RelativeFactors factors)
    {
        (this.model, this.sizes, this.products, this.factors) = (model, sizes, products, factors);
        factored = new Factored(products, factors);
    }

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

    /// <summary>Fits a model.</summary>
    /// <param name="model">The model.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">The model makes no sense, or a fixed effect cannot be told from the others.</exception>
    public static MixedFit Of(MixedModel model, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(model);
        model.Check();
        var sizes = model.Random.Select(term => term.Columns.Select(Size).ToArray()).ToArray();
        var products = new CrossProducts(model with { Random = [.. model.Random.Select((term, t) => Scaled(term, sizes[t]))] });
        var widths = model.Random.Select(term => term.Width).ToArray();
        var (start, stretch) = Start(model.Random);
        var found = QuasiNewton.Minimum(
            at =>
            {
                cancel.ThrowIfCancellationRequested();
                var here = new Factored(products, new RelativeFactors(widths, [.. at.Zip(stretch, (value, by) => value / by)]));
                return new QuasiNewton.Place(here.Criterion, () => [.. here.Slope().Zip(stretch, (slope, by) => slope / by)]);
            },
            [.. start.Zip(stretch, (value, by) => value * by)],
            1,
            Settled,
            MostSteps);
        return new MixedFit(model, sizes, products, new RelativeFactors(widths, [.. found.Zip(stretch, (value, by) => value / by)]));
    }

    /// <summary>Unit factors, and what to stretch each entry by so that the criterion bends about as much along all: by the root of the levels that tell of it.</summary>
    private static (IReadOnlyList<double> Unit, IReadOnlyList<double> Stretch) Start(IReadOnlyList<RandomTerm> terms)
    {
        var (unit, stretch) = (new List<double>(), new List<double>());
        foreach (var term in terms)
        {
            for (var c = 0; c < term.Width; c++)
            {
                for (var r = c; r < term.Width; r++)
                {
                    unit.Add(r == c ? 1 : 0);
                    stretch.Add(Math.Sqrt(2.0 * term.Levels));
                }
            }
        }

        return (unit, stretch);
    }

    private double[] UnitEffects(int term, int level)
    {
        var q = factors.Widths[term];
        if (products.Nesting.Across.Contains(term))
            return factored.BorderSolution[(products.BorderOffsets[term] + (level * q))..][..q];
        var block = Array.FindIndex(products.Blocks, b => b.Groups.Any(g => g.Term == term && g.Level == level));
        return block < 0 ? new double[q] : factored.Effects(block)[products.OffsetOfLevel[term][level]..][..q];
    }

    /// <summary>Root mean square of a column, so that all are of one size to the search.</summary>
    private static double Size(IReadOnlyList<double> column)
    {
        var size = Math.Sqrt(column.Sum(value => value * value) / column.Count);
        return size > 0 ? size : 1;
    }

    private static RandomTerm Scaled(RandomTerm term, double[] sizes) =>
        term with { Columns = [.. term.Columns.Select((column, c) => (IReadOnlyList<double>)[.. column.Select(value => value / sizes[c])])] };
}
