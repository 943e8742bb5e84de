using CsCheck;
using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Tests.Coating;

public sealed class CoatReadingsTests
{
    private static readonly WovenMesh Mesh = WovenMesh.Of(new MeshFabric(61, 64));
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

    /// <summary>A gauge reads to ±1 to 2 µm, so no number of readings tells one new reading closer. Common practice, no source.</summary>
    [Fact]
    public void A_new_reading_is_never_known_better_than_the_gauge()
    {
        var eom = Predict([.. Enumerable.Repeat(15.0, 500)]).EomUm;

        Assert.True(eom.High - eom.Value >= 1.5);
    }

    [Fact]
    public void A_reading_below_zero_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Predict([12, -1]));

    private static CoatPrediction Predict(params double[] readingsUm) => CoatModel.Predict(
        Mesh,
        new StencilEmulsion { Id = "invented", Family = EmulsionFamily.DualCure, SolidsPercent = 37 },
        new Trough("round", 1.5),
        TwoAndOne,
        readingsUm);
}
