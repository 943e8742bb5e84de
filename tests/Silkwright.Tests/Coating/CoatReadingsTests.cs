using CsCheck;
using Silkwright.Coating;
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
        var others = CoatModel.Predict(Mesh, Emulsion, Round, TwoAndOne, HeavyHand(3)).EomUm;

        Assert.InRange(others.Value, before.Value + 1, 24);
        Assert.Equal(Ground.Model, others.Ground);
        Assert.True(others.High - others.Low > own.High - own.Low);
    }

    [Fact]
    public void A_heavy_hand_needs_fewer_strokes_for_the_same_thickness()
    {
        var plain = CoatModel.For(16, Mesh, Emulsion, Round);
        var learned = CoatModel.For(16, Mesh, Emulsion, Round, HeavyHand(6));

        Assert.Equal(4, plain.Strokes.Count);
        Assert.Equal(2, learned.Strokes.Count);
    }

    /// <summary>
    /// One reading, by hand: prior 11.6 with standard deviation τ, reading 24 with σ² = (1.5/1.6449)² + (0.12·24)²; the mean
    /// weighted by the inverse variances (normal model with known variances, any textbook).
    /// </summary>
    [Fact]
    public void One_reading_is_weighted_by_the_inverse_variances()
    {
        var before = Predict().EomUm;
        var tau = (before.High - before.Low) / (2 * 1.6449);
        var sigma2 = Math.Pow(1.5 / 1.6449, 2) + Math.Pow(0.12 * 24, 2);
        var expected = ((before.Value / (tau * tau)) + (24 / sigma2)) / ((1 / (tau * tau)) + (1 / sigma2));

        Assert.Equal(expected, Predict(24).EomUm.Value, 1e-6);
    }

    /// <summary>A gauge reads to ±1 to 2 µm, so no number of readings tells one new reading closer. Common practice, no source.</summary>
    [Fact]
    public void A_new_reading_is_never_known_better_than_the_gauge()
    {
        var eom = Predict([.. Enumerable.Repeat(15.0, 500)]).EomUm;

        Assert.True(eom.High - eom.Value >= 1.5);
    }

    [Fact]
    public void A_reading_below_zero_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Predict(12, -1));

    private static CoatPrediction Predict(params double[] readingsUm) => CoatModel.Predict(Mesh, Emulsion, Round, TwoAndOne, readingsUm);

    /// <summary>Readings of 15 µm from one stroke a side, where the model expects about 6.</summary>
    private static GaugeReading[] HeavyHand(int count) => [.. Enumerable.Repeat(
        new GaugeReading(Mesh, Round, [new(StrokeSide.Print), new(StrokeSide.Squeegee)], 15), count)];
}
