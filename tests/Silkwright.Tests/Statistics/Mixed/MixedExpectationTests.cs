using MathNet.Numerics.LinearAlgebra;
using Silkwright.Statistics.Mixed;

namespace Silkwright.Tests.Statistics.Mixed;

/// <summary>
/// Expectations, their variance and the criterion against the same model written out plainly: one covariance matrix of all rows, generalised least squares and the
/// best linear unbiased prediction of a further row (universal kriging), as in N. Cressie, Statistics for Spatial Data, ch. 3 (from memory).
/// </summary>
public sealed class MixedExpectationTests
{
    [Theory]
    [InlineData(1, true, false)]
    [InlineData(2, true, true)]
    [InlineData(3, false, true)]
    [InlineData(4, false, true)]
    public void A_further_row_is_expected_as_by_the_plain_equations(int seed, bool withFixed, bool believed)
    {
        var (model, ratios) = Drawn(new Random(seed), withFixed, believed);
        var known = model with { Random = [.. model.Random.Select((term, t) => term with { Prior = new RatioPrior(ratios[t]) })] };
        var fit = MixedFit.Of(known, TestContext.Current.CancellationToken);
        var plain = new Plain(known, ratios);
        Assert.Equal(plain.Criterion, fit.Criterion, 1e-6);
        Assert.Equal(plain.ResidualVariance, fit.ResidualVariance, 1e-9);
        foreach (var levels in new int?[][] { [0, 0, 0], [2, 5, 1], [1, null, 2], [null, null, 0], [null, null, null] })
        {
            double[] fixedRow = withFixed ? [1, 3.5] : [];
            var columns = new[] { 1.0, 1.0, 2.5 };
            var (mean, variance) = fit.Expect(fixedRow, [.. levels.Select((level, t) => (level, (IReadOnlyList<double>)[columns[t]]))]);
            var (plainMean, plainVariance) = plain.Expect(fixedRow, levels, columns);
            Assert.Equal(plainMean, mean, 1e-8);
            Assert.Equal(plainVariance, variance, 1e-8);
        }
    }

    [Fact]
    public void With_beliefs_the_fit_is_the_lowest_place_of_the_plain_criterion_and_the_beliefs_together()
    {
        for (var seed = 10; seed < 16; seed++)
        {
            var (model, ratios) = Drawn(new Random(seed), withFixed: true, believed: true);
            var beliefs = ratios.Select(ratio => new RatioPrior(ratio, 0.5)).ToArray();
            var fit = MixedFit.Of(model with { Random = [.. model.Random.Select((term, t) => term with { Prior = beliefs[t] })] }, TestContext.Current.CancellationToken);
            double[] found = [.. ratios.Select((_, t) => Math.Sqrt(fit.Covariance(t, 0, 0) / fit.ResidualVariance))];
            var lowest = Together(found);
            for (var t = 0; t < found.Length; t++)
            {
                foreach (var by in new[] { 0.98, 1.02 })
                    Assert.True(Together([.. found.Select((value, i) => i == t ? by * value : value)]) > lowest);
            }

            double Together(double[] at) => new Plain(model, at).Criterion + at.Zip(beliefs, (value, belief) => Math.Pow(Math.Log(value / belief.Ratio) / 0.5, 2)).Sum();
        }
    }

    /// <summary>A known shop and hand, a hand without rows yet, a shop without rows yet, a shop that is new, and each of them again: the plain equations over all rows tell the same.</summary>
    [Theory]
    [InlineData(21, true, false)]
    [InlineData(22, true, true)]
    [InlineData(23, false, true)]
    public void Rows_added_one_by_one_count_as_if_they_had_been_there(int seed, bool withFixed, bool believed)
    {
        var random = new Random(seed);
        var (model, ratios) = Drawn(random, withFixed, believed);
        model = model with { Random = [.. model.Random.Select((term, t) => term with { Prior = new RatioPrior(ratios[t]) })] };
        var fit = MixedFit.Of(model, TestContext.Current.CancellationToken);
        foreach (var (shop, hand) in new[] { (0, 1), (2, 12), (5, 13), (5, 13), (6, 14), (6, 15), (2, 12), (0, 0) })
        {
            var (kind, x, y, weight) = (random.Next(3), 5 * random.NextDouble(), 9 * random.NextDouble(), 0.5 + random.NextDouble());
            fit = fit.With(new MixedRow(y, withFixed ? [1, x] : [], [(shop, [1]), (hand, [1]), (kind, [x])], weight));
            model = Longer(model, y, withFixed ? [1, x] : [], [shop, hand, kind], [1, 1, x], weight);
            var plain = new Plain(model, ratios);
            Assert.Equal(plain.Criterion, fit.Criterion, 1e-6);
            Assert.Equal(plain.ResidualVariance, fit.ResidualVariance, 1e-9);
            foreach (var levels in new int?[][] { [shop, hand, kind], [0, 1, 0], [null, null, 1] })
            {
                var (mean, variance) = fit.Expect(withFixed ? [1, 2] : [], [.. levels.Select((level, t) => (level, (IReadOnlyList<double>)[t == 2 ? 2.0 : 1]))]);
                var (plainMean, plainVariance) = plain.Expect([1, 2], levels, [1, 1, 2]);
                Assert.Equal(plainMean, mean, 1e-8);
                Assert.Equal(plainVariance, variance, 1e-8);
            }
        }
    }

    [Fact]
    public void A_row_that_only_a_whole_fit_can_take_in_is_refused()
    {
        var (model, _) = Drawn(new Random(5), withFixed: false, believed: true);
        var fit = MixedFit.Of(model, TestContext.Current.CancellationToken);
        _ = Assert.Throws<ArgumentException>(() => fit.With(new MixedRow(1, [], [(0, [1]), (0, [1]), (3, [1])])));
        _ = Assert.Throws<ArgumentException>(() => fit.With(new MixedRow(1, [], [(1, [1]), (0, [1]), (0, [1])])));
        _ = Assert.Throws<ArgumentException>(() => fit.With(new MixedRow(double.NaN, [], [(0, [1]), (0, [1]), (0, [1])])));
    }

    private static MixedModel Longer(MixedModel model, double y, double[] fixedRow, int[] levels, double[] columns, double weight) => model with
    {
        Response = [.. model.Response, y],
        Fixed = [.. model.Fixed.Select((column, c) => (IReadOnlyList<double>)[.. column, fixedRow[c]])],
        Weights = [.. model.Weights!, weight],
        Random = [.. model.Random.Select((term, t) => term with { LevelOfRow = [.. term.LevelOfRow, levels[t]], Levels = Math.Max(term.Levels, levels[t] + 1), Columns = [[.. term.Columns[0], columns[t]]] })],
    };

    private static (MixedModel Model, double[] Ratios) Drawn(Random random, bool withFixed, bool believed)
    {
        const int rows = 40;
        int[] shop = [.. Enumerable.Range(0, rows).Select(_ => random.Next(5))];
        int[] hand = [.. shop.Select(s => (2 * s) + random.Next(2))];
        int[] kind = [.. Enumerable.Range(0, rows).Select(_ => random.Next(3))];
        double[] x = [.. Enumerable.Range(0, rows).Select(_ => 5 * random.NextDouble())];
        var model = new MixedModel
        {
            Response = [.. Enumerable.Range(0, rows).Select(i => (2 * x[i]) + (random.NextDouble() * 4) + shop[i] - (0.5 * kind[i] * x[i]))],
            Fixed = withFixed ? [[.. Enumerable.Repeat(1.0, rows)], x] : [],
            Weights = [.. Enumerable.Range(0, rows).Select(_ => 0.5 + (2 * random.NextDouble()))],
            Random = [RandomTerm.Height("shop", shop, 6), RandomTerm.Height("hand", hand, 12), new RandomTerm("kind", kind, 3, [x])],
            Residual = believed ? new ResidualPrior(1.7, 3) : null,
        };
        return (model, [0.3 + random.NextDouble(), 0.2 + random.NextDouble(), 0.1 + (0.3 * random.NextDouble())]);
    }

    /// <summary>The model with known ratios, all rows in one matrix.</summary>
    private sealed class Plain
    {
        private readonly MixedModel model;
        private readonly double[] ratios;
        private readonly Matrix<double> inverse;
        private readonly Matrix<double> x;
        private readonly Matrix<double>? spread;
        private readonly Vector<double> beta;
        private readonly Vector<double> off;

        public Plain(MixedModel model, double[] ratios)
        {
            (this.model, this.ratios) = (model, ratios);
            var n = model.Response.Count;
            var v = Matrix<double>.Build.Dense(n, n, (i, j) => Shared(Levels(i), Columns(i), Levels(j), Columns(j)) + (i == j ? 1 / model.Weights![i] : 0));
            inverse = v.Inverse();
            x = Matrix<double>.Build.Dense(n, Math.Max(1, model.Fixed.Count), (i, j) => model.Fixed.Count == 0 ? 0 : model.Fixed[j][i]);
            spread = model.Fixed.Count == 0 ? null : (x.Transpose() * inverse * x).Inverse();
            var y = Vector<double>.Build.DenseOfEnumerable(model.Response);
            beta = spread is null ? Vector<double>.Build.Dense(1) : spread * x.Transpose() * inverse * y;
            off = y - (x * beta);
            var freedom = n - model.Fixed.Count + (model.Residual?.Freedom ?? 0);
            ResidualVariance = ((off * inverse * off) + (model.Residual is { } r ? r.Freedom * r.Variance : 0)) / freedom;
            Criterion = Math.Log(v.Determinant()) - (spread is null ? 0 : Math.Log(spread.Determinant())) + (freedom * (1 + Math.Log(2 * Math.PI * ResidualVariance)));
        }

        public double Criterion { get; }

        public double ResidualVariance { get; }

        public (double Mean, double Variance) Expect(double[] fixedRow, int?[] levels, double[] columns)
        {
            var shared = Vector<double>.Build.Dense(model.Response.Count, i => Shared(levels, columns, Levels(i), Columns(i)));
            var row = Vector<double>.Build.DenseOfEnumerable(spread is null ? [0] : fixedRow);
            var left = row - (x.Transpose() * inverse * shared);
            var variance = Shared(levels, columns, levels, columns, self: true) - (shared * inverse * shared) + (spread is null ? 0 : left * spread * left);
            return ((row * beta) + (shared * inverse * off), ResidualVariance * variance);
        }

        private int?[] Levels(int row) => [.. model.Random.Select(term => (int?)term.LevelOfRow[row])];

        private double[] Columns(int row) => [.. model.Random.Select(term => term.Columns[0][row])];

        private double Shared(int?[] levels, double[] columns, int?[] others, double[] otherColumns, bool self = false)
        {
            var sum = 0.0;
            for (var t = 0; t < ratios.Length; t++)
                sum += (levels[t] is { } level && level == others[t]) || (self && levels[t] is null) ? ratios[t] * ratios[t] * columns[t] * otherColumns[t] : 0;
            return sum;
        }
    }
}
