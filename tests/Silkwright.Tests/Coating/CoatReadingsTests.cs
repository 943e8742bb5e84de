using CsCheck;
using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Tests.Coating;

public sealed class CoatReadingsTests
{
    private static readonly WovenMesh Mesh = WovenMesh.Of(new MeshFabric(61, 64));
    private static readonly Trough Round = new("round", 1.5);
    private static readonly StencilEmulsion Emulsion = new() { Id = "invented", Family = EmulsionFamily.DualCure, SolidsPercent = 37 };
    private static readonly Stroke[] TwoAndOne = [new(StrokeSide.Print), new(StrokeSide.Print), new(StrokeSide.Squeegee)];

    [Fact]
    public void Readings_draw_the_prediction_to_themselves_and_narrow_it() =>
        Gen.Double[3, 40].Array[1, 12].Sample(readings =>
        {
            var before = Predict().EomUm;
            var after = Predict(readings).EomUm;
            return Math.Abs(after.Value - readings.Average()) <= Math.Abs(before.Value - readings.Average()) + 1e-9
                && after.Ground == Ground.MeasuredHere;
        });

    [Fact]
    public void Ten_even_readings_are_nearly_believed()
    {
        var before = Predict().EomUm;
        var after = Predict([.. Enumerable.Repeat(18.0, 10)]).EomUm;

        Assert.Equal(18, after.Value, 0.5);
        Assert.True(after.High - after.Low < before.High - before.Low);
        Assert.InRange(18, after.Low, after.High);
    }

    [Fact]
    public void Readings_of_another_coat_count_but_less_than_readings_of_this_one()
    {
        var before = Predict().EomUm;
        var own = Predict(24, 24, 24).EomUm;
        var others = Predict(HeavyHand(3)).EomUm;

        // The hand that lays 15 µm of one coat lays more of another too, but not by the whole share.
        Assert.InRange(others.Value, before.Value + 1, before.Value * 15 / CoatModel.Predict(Mesh, Emulsion, Round, OneAndOne).EomUm.Value);
        Assert.Equal(Ground.Model, others.Ground);
        Assert.True(others.High - others.Low > own.High - own.Low);
    }

    [Fact]
    public void A_heavy_hand_needs_fewer_strokes_for_the_same_thickness()
    {
        var plain = CoatModel.For(16, Mesh, Emulsion, Round);
        var learned = LearntCoat.For(16, Coat(TwoAndOne), CoatHierarchy.Of(HeavyHand(6), cancel: Cancel));

        Assert.Equal(4, plain.Strokes.Count);
        Assert.Equal(2, learned.Strokes.Count);
    }

    /// <summary>
    /// One reading of 24 µm, from the definition alone: docs/engines/coating.md, equations 1 to 5 for what is expected and how it moves, and 14 to 18 for what is
    /// believed. The spreads that make it likeliest are looked for here by halving steps, and each belief is drawn by its share of the variance.
    /// </summary>
    [Fact]
    public void One_reading_draws_the_mean_as_the_plain_equations_say()
    {
        var (solids, density) = (FamilyValues.SolidsPercent(Emulsion), FamilyValues.DryDensityGPerCm3(Emulsion));
        var expected = Eom(0.29, 0.50, 0.18, Mesh.VoidUm.Value, solids.Value, density.Value);
        double Move(double high, double low) => (high - low) / (2 * 1.6449);
        double At(double film = 0.29, double squeegee = 0.50, double sink = 0.18, double? voids = null, double? s = null, double? d = null) => Eom(film, squeegee, sink, voids ?? Mesh.VoidUm.Value, s ?? solids.Value, d ?? density.Value);
        double[] constants = [Move(At(film: 0.36), At(film: 0.22)), Move(At(squeegee: 0.7), At(squeegee: 0.3)), Move(At(sink: 0.24), At(sink: 0.12))];
        var known = Squares(constants);
        var emulsion = Squares(0.08 * expected, Move(At(s: solids.High), At(s: solids.Low)), Move(At(d: density.High), At(d: density.Low)));
        var mesh = Squares(0.07 * expected, Move(At(voids: Mesh.VoidUm.High), At(voids: Mesh.VoidUm.Low)));
        double[] lasting = [Squares(0.13 * expected), Squares(0.11 * expected), Squares(0.07 * expected), Squares(0.09 * expected), emulsion, mesh];
        var fleeting = Squares(0.91, 0.06 * expected, 0.1 * expected);
        var off = 24 - expected;

        double Lasting(double[] logs) => known + logs.Zip(lasting, (log, square) => Math.Exp(2 * log) * square).Sum();
        double Unlikely(double[] logs)
        {
            var all = Lasting(logs) + fleeting;
            return Math.Log(all) + (7 * Math.Log(((off * off / all) + 6) / 7)) + logs.Sum(log => log * log / 0.25);
        }

        var at = new double[lasting.Length];
        for (var step = 0.5; step > 1e-7; step /= 2)
        {
            for (var again = true; again;)
            {
                again = false;
                for (var i = 0; i < at.Length; i++)
                {
                    foreach (var by in new[] { step, -step })
                    {
                        double[] tried = [.. at.Select((log, j) => j == i ? log + by : log)];
                        (at, again) = Unlikely(tried) < Unlikely(at) ? (tried, true) : (at, again);
                    }
                }
            }
        }

        // The constants go each by their share, in standard deviations, and the balance is worked out anew; the rest is added.
        var drawn = off / (Lasting(at) + fleeting);
        var anew = At(0.29 + (drawn * constants[0] * Move(0.36, 0.22)), 0.50 + (drawn * constants[1] * Move(0.7, 0.3)), 0.18 + (drawn * constants[2] * Move(0.24, 0.12)));
        Assert.Equal(anew + (drawn * (Lasting(at) - known)), Predict(24).EomUm.Value, 1e-3);
    }

    /// <summary>Equations 1 to 5 for two strokes on the print side and one on the squeegee side with a round edge: three films over the mesh, one behind.</summary>
    private static double Eom(double film, double squeegee, double sink, double voids, double solidsPercent, double density)
    {
        var volume = solidsPercent / density / ((solidsPercent / density) + ((100 - solidsPercent) / 0.998));
        var hollow = voids - (volume * voids * (1 + squeegee));
        return (volume * 3 * film * voids) - (sink * hollow);
    }

    private static double Squares(params double[] moves) => moves.Sum(move => move * move);

    /// <summary>A gauge reads to ±1 to 2 µm, so no number of readings tells one new reading closer. Common practice, no source.</summary>
    [Fact]
    public void A_new_reading_is_never_known_better_than_the_gauge()
    {
        var eom = Predict([.. Enumerable.Repeat(15.0, 500)]).EomUm;

        Assert.True(eom.High - eom.Value >= 1.49);
    }

    [Fact]
    public void A_reading_that_is_no_number_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Predict(12, double.NaN));

    /// <summary>More solids, another filled stroke and a rounder edge never thin a coat, whatever thicknesses were read of others.</summary>
    [Fact]
    public void Readings_leave_it_monotone_in_solids_strokes_and_edge() =>
        Gen.Select(Gen.Double[2, 30].Array[1, 8], Gen.Int[1, 3], Gen.Double[20, 50], Gen.Double[0.3, 2.5]).Sample((readings, print, solids, edge) =>
        {
            var learnt = CoatHierarchy.Of([.. readings.Select((um, i) => new CoatRead(Coat(i % 2 == 0 ? TwoAndOne : OneAndOne), um))], cancel: Cancel);
            double Mean(int strokes, double solidsPercent, double edgeMm) => learnt.ExpectMean(new CoatObservation
            {
                Shop = "one",
                Trough = new Trough("asked", edgeMm),
                Emulsion = new StencilEmulsion { Id = "asked", Family = EmulsionFamily.DualCure, SolidsPercent = solidsPercent },
                Mesh = Mesh,
                Strokes = [.. Enumerable.Repeat(new Stroke(StrokeSide.Print), strokes), new Stroke(StrokeSide.Squeegee)],
            }).Value;
            var at = Mean(print, solids, edge);
            return Mean(print + 1, solids, edge) >= at - 1e-9 && Mean(print, solids + 3, edge) >= at - 1e-9 && Mean(print, solids, edge * 1.1) >= at - 1e-9;
        }, iter: 300);

    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;
    private static readonly Stroke[] OneAndOne = [new(StrokeSide.Print), new(StrokeSide.Squeegee)];

    private static CoatObservation Coat(Stroke[] strokes) => new() { Shop = "one", Operator = "anna", Trough = Round, Emulsion = Emulsion, Mesh = Mesh, Strokes = strokes };

    private static CoatPrediction Predict(params double[] readingsUm) => Predict([.. readingsUm.Select(um => new CoatRead(Coat(TwoAndOne), um))]);

    private static CoatPrediction Predict(CoatRead[] readings) => LearntCoat.Predict(Coat(TwoAndOne), CoatHierarchy.Of(readings, cancel: Cancel));

    /// <summary>Readings of 15 µm from one stroke a side, where the model expects about 6.</summary>
    private static CoatRead[] HeavyHand(int count) => [.. Enumerable.Repeat(new CoatRead(Coat(OneAndOne), 15), count)];
}
