using MathNet.Numerics.LinearAlgebra;
using Silkwright.Statistics.Mixed;

namespace Silkwright.Tests.Statistics.Mixed;

/// <summary>
/// What rows tell without the rows. Held to the plain dense equations over all rows: y is normal with covariance σ² (D + Z Z'), so that the rows of one shop
/// tell of the shared effects by X' V⁻¹ X and X' V⁻¹ y (any text on generalised least squares).
/// </summary>
public sealed class EffectInformationTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public void What_a_shops_rows_tell_of_shared_effects_is_that_of_the_dense_equations()
    {
        var rows = Drawn(new Random(3), shops: 1, each: 25);
        var told = Fit(rows, null).Tell([(2, 0), (2, 1), (2, 2)]);
        var (precision, pull, squares) = Dense(rows);
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(pull[i], told.Pull[i], 1e-9 * pull.L2Norm());
            for (var j = 0; j < 3; j++)
                Assert.Equal(precision[i, j], told.Precision[(i * 3) + j], 1e-9 * precision.FrobeniusNorm());
        }

        Assert.Equal(squares, told.Squares, 1e-9 * squares);
        Assert.Equal(25, told.Rows);
    }

    /// <summary>The joint fit of all rows is the oracle: with the ratios known, adding up what parts of the shops tell must not lose or double anything.</summary>
    [Fact]
    public void A_fit_beside_what_other_shops_rows_told_is_the_fit_of_all_rows()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var rows = Drawn(new Random(seed), shops: 6, each: 4 + seed);
            Row[] ours = [.. rows.Where(row => row.Shop < 2)], one = [.. rows.Where(row => row.Shop is 2 or 3)], other = [.. rows.Where(row => row.Shop > 3)];
            (int, int)[] shared = [(2, 0), (2, 1), (2, 2)];
            var told = new[] { one, other }.Select(some => Fit(Numbered(some), null).Tell(shared)).ToArray();
            var sum = new EffectInformation(
                shared, [.. told[0].Precision.Zip(told[1].Precision, (a, b) => a + b)], [.. told[0].Pull.Zip(told[1].Pull, (a, b) => a + b)], told.Sum(t => t.Squares), told.Sum(t => t.Rows));
            MixedFit alone = Fit(ours, null), beside = Fit(ours, sum), joint = Fit(rows, null);
            Assert.Equal(joint.ResidualVariance, beside.ResidualVariance, 1e-9);
            for (var kind = 0; kind < 3; kind++)
            {
                Assert.Equal(joint.Effects(2, kind)[0], beside.Effects(2, kind)[0], 1e-8);
                Assert.NotEqual(alone.Effects(2, kind)[0], beside.Effects(2, kind)[0], 1e-3);
            }

            var asked = (IReadOnlyList<(int?, IReadOnlyList<double>)>)[(1, [1.0]), (null, [1.0]), (2, [0.7])];
            Assert.Equal(joint.Expect([], asked).Mean, beside.Expect([], asked).Mean, 1e-8);
            Assert.Equal(joint.Expect([], asked).Variance, beside.Expect([], asked).Variance, 1e-8);
        }
    }

    /// <summary>The likelihood along a ratio, added up over a grid with the dense equations, is the oracle: Laplace holds where it is nearly normal, with many levels.</summary>
    [Fact]
    public void What_rows_tell_of_a_ratio_is_how_their_likelihood_falls_off_about_it()
    {
        var rows = Drawn(new Random(5), shops: 60, each: 6);
        var told = Fit(rows, null, learns: true).TellRatios()[0];
        Assert.Equal(default, Fit(rows, null, learns: true).TellRatios()[2]);
        var (best, spread) = (told.Pull / told.Precision, 1 / Math.Sqrt(told.Precision));
        var likelihoods = Enumerable.Range(-8, 17).Select(k => (At: best + (k * spread / 2), Log: 0.0)).Select(p => (p.At, Log: DenseLog(rows, Math.Exp(p.At)))).ToArray();
        var most = likelihoods.Max(p => p.Log);
        var weight = likelihoods.Sum(p => Math.Exp(p.Log - most));
        var mean = likelihoods.Sum(p => p.At * Math.Exp(p.Log - most)) / weight;
        var deviation = Math.Sqrt(likelihoods.Sum(p => (p.At - mean) * (p.At - mean) * Math.Exp(p.Log - most)) / weight);
        Assert.Equal(mean, best, 0.35 * spread);
        Assert.InRange(spread / deviation, 0.85, 1.15);
    }

    [Fact]
    public void Only_effects_that_cross_the_others_are_told_of()
    {
        var fit = Fit(Drawn(new Random(1), 2, 4), null);
        _ = Assert.Throws<ArgumentException>(() => fit.Tell([(0, 0)]));
        _ = Assert.Throws<ArgumentException>(() => Fit(Drawn(new Random(1), 2, 4), new EffectInformation([(0, 0)], [1], [1], 1, 1)));
        _ = Assert.Throws<ArgumentException>(() => Fit(Drawn(new Random(1), 2, 4), new EffectInformation([(2, 0)], [double.NaN], [1], 1, 1)));
        _ = Assert.Throws<ArgumentException>(() => Fit(Drawn(new Random(1), 2, 4), new EffectInformation([(2, 0)], [1], [], 1, 1)));
    }

    private const double ShopRatio = 0.8;
    private const double HandRatio = 0.5;
    private const double KindRatio = 1.3;

    private sealed record Row(int Shop, int Hand, int Kind, double Slope, double Y, double Weight);

    private static Row[] Drawn(Random random, int shops, int each)
    {
        double[] shop = [.. Enumerable.Range(0, shops).Select(_ => random.NextDouble() - 0.5)];
        double[] hand = [.. Enumerable.Range(0, 2 * shops).Select(_ => random.NextDouble() - 0.5)];
        return
        [
            .. from s in Enumerable.Range(0, shops)
               from _ in Enumerable.Range(0, each)
               let h = (2 * s) + random.Next(2)
               let kind = random.Next(3)
               let slope = 0.5 + random.NextDouble()
               select new Row(s, h, kind, slope, 2 + (2 * shop[s]) + hand[h] + (kind * slope) + (2 * (random.NextDouble() - 0.5)), 0.5 + random.NextDouble()),
        ];
    }

    private static Row[] Numbered(Row[] some)
    {
        int[] shops = [.. some.Select(row => row.Shop).Distinct()], hands = [.. some.Select(row => row.Hand).Distinct()];
        return [.. some.Select(row => row with { Shop = Array.IndexOf(shops, row.Shop), Hand = Array.IndexOf(hands, row.Hand) })];
    }

    private static MixedFit Fit(Row[] rows, EffectInformation? elsewhere, bool learns = false)
    {
        double? spread = learns ? 0.5 : null;
        return MixedFit.Of(
            new MixedModel
            {
                Response = [.. rows.Select(row => row.Y)],
                Fixed = [],
                Random =
                [
                    new RandomTerm("shop", [.. rows.Select(row => row.Shop)], rows.Max(row => row.Shop) + 1, [[.. rows.Select(_ => 1.0)]], new RatioPrior(ShopRatio, spread)),
                    new RandomTerm("hand", [.. rows.Select(row => row.Hand)], rows.Max(row => row.Hand) + 1, [[.. rows.Select(_ => 1.0)]], new RatioPrior(HandRatio)),
                    new RandomTerm("kind", [.. rows.Select(row => row.Kind)], 3, [[.. rows.Select(row => row.Slope)]], new RatioPrior(KindRatio), Crosses: true),
                ],
                Weights = [.. rows.Select(row => row.Weight)],
                Residual = new ResidualPrior(1, 6),
                Elsewhere = elsewhere,
            },
            Cancel);
    }

    private static (Matrix<double> Precision, Vector<double> Pull, double Squares) Dense(Row[] rows)
    {
        var inverse = Covariance(rows, ShopRatio, withKinds: false).Inverse();
        var x = Matrix<double>.Build.Dense(rows.Length, 3, (i, j) => rows[i].Kind == j ? rows[i].Slope : 0);
        var y = Vector<double>.Build.Dense([.. rows.Select(row => row.Y)]);
        return (x.TransposeThisAndMultiply(inverse * x), x.TransposeThisAndMultiply(inverse * y), y * inverse * y);
    }

    private static Matrix<double> Covariance(Row[] rows, double shopRatio, bool withKinds) => Matrix<double>.Build.Dense(rows.Length, rows.Length, (i, j) =>
        (i == j ? 1 / rows[i].Weight : 0) + (rows[i].Shop == rows[j].Shop ? shopRatio * shopRatio : 0) + (rows[i].Hand == rows[j].Hand ? HandRatio * HandRatio : 0)
        + (withKinds && rows[i].Kind == rows[j].Kind ? KindRatio * KindRatio * rows[i].Slope * rows[j].Slope : 0));

    /// <summary>Logarithm of the likelihood with the residual variance at its best, six rows of variance 1 believed.</summary>
    private static double DenseLog(Row[] rows, double shopRatio)
    {
        var v = Covariance(rows, shopRatio, withKinds: true).Cholesky();
        var y = Vector<double>.Build.Dense([.. rows.Select(row => row.Y)]);
        return -0.5 * (v.DeterminantLn + ((rows.Length + 6) * Math.Log((y * v.Solve(y)) + 6)));
    }
}
