using CsCheck;
using Silkwright.Light;

namespace Silkwright.Tests.Light;

/// <summary>Where a beam on turbid layers ends, against published tables and an independent method.</summary>
public class SlabTransportTests
{
    private const double Endless = double.PositiveInfinity;
    private const long Photons = 2_000_000;

    /// <summary>What a reference of five digits may be off by itself, beside four standard errors of the run.</summary>
    private const double ReferenceError = 2e-4;

    /// <summary>
    /// First row: van de Hulst, Multiple Light Scattering vol. 2 (1980), table 35. Second: Giovanelli, Optica Acta 2 (1955) 153, from memory. The others:
    /// the adding-doubling method at 32 directions (Prahl, van Gemert and Welch 1993), computed with a public implementation.
    /// </summary>
    [Theory]
    [InlineData(1.0, 10, 90, 0.75, 200, 0.09739, 0.66096)]
    [InlineData(1.5, 10, 90, 0, Endless, 0.2600, 0)]
    [InlineData(1.5, 10, 90, 0.75, 200, 0.12683, 0.49317)]
    [InlineData(1.0, 1, 99, 0, 200, 0.49749, 0.46570)]
    [InlineData(1.5, 1, 99, 0.9, 500, 0.22774, 0.61612)]
    [InlineData(1.0, 50, 50, 0, 100, 0.09912, 0.44606)]
    [InlineData(1.4, 50, 50, 0.9, 100, 0.03895, 0.54511)]
    [InlineData(1.5, 5, 95, 0.8, 400, 0.16947, 0.39260)]
    [InlineData(1.5, 0.1, 99.9, 0.9, 1000, 0.38750, 0.56956)]
    [InlineData(1.5, 1, 99, 0, 200, 0.44654, 0.47008)]
    public void A_slab_throws_back_and_lets_through_what_the_tables_say(
        double index, double absorption, double scattering, double anisotropy, double thicknessUm, double reflectance, double transmittance)
    {
        var result = Follow(Slab(new LayerOptics(index, absorption, scattering, anisotropy, thicknessUm)));
        Holds(reflectance, result.SpecularReflectance + result.DiffuseReflectance, result.DiffuseReflectanceError);
        Holds(transmittance, result.TotalTransmittance, result.TotalTransmittanceError);
    }

    /// <summary>Without scattering: e^-1, and the exact slab with its inner reflections, T = (1 - r)^2 t / (1 - r^2 t^2) with r = 0.04.</summary>
    [Theory]
    [InlineData(1.0, 0, 0.367879)]
    [InlineData(1.5, 0.044993, 0.339113)]
    public void Without_scattering_the_exact_slab_comes_out(double index, double reflectance, double transmittance)
    {
        var result = Follow(Slab(new LayerOptics(index, 100, 0, 0, 100)));
        Assert.InRange(result.SpecularReflectance + result.DiffuseReflectance - reflectance, -2e-4, 2e-4);
        Assert.InRange((result.TotalTransmittance - transmittance) / result.TotalTransmittanceError, -4, 4);
        Assert.Equal(result.TotalTransmittance, result.UnscatteredTransmittance);
    }

    /// <summary>Two layers of one index: adding-doubling for layers at 32 directions, with a public implementation; absorbed shares from a Monte Carlo of another hand.</summary>
    [Fact]
    public void Two_layers_share_the_light_as_an_independent_method_has_it()
    {
        var result = Follow(Slab(new LayerOptics(1.5, 10, 90, 0.75, 100), new LayerOptics(1.5, 1, 50, 0.8, 200)));
        Holds(0.15511, result.SpecularReflectance + result.DiffuseReflectance, result.DiffuseReflectanceError);
        Holds(0.57005, result.TotalTransmittance, result.TotalTransmittanceError);
        Assert.Equal(0.2276, result.AbsorbedByLayer[0], 1e-3);
        Assert.Equal(0.0473, result.AbsorbedByLayer[1], 1e-3);
    }

    [Fact]
    public void A_slab_cut_in_two_is_the_same_slab()
    {
        var whole = Follow(Slab(new LayerOptics(1.5, 10, 90, 0.75, 200)));
        var cut = Follow(Slab(new LayerOptics(1.5, 10, 90, 0.75, 60), new LayerOptics(1.5, 10, 90, 0.75, 140)));
        Assert.InRange((whole.TotalTransmittance - cut.TotalTransmittance) / whole.TotalTransmittanceError, -6, 6);
        Assert.InRange((whole.DiffuseReflectance - cut.DiffuseReflectance) / whole.DiffuseReflectanceError, -6, 6);
    }

    [Fact]
    public void No_light_is_lost_or_made() => Gen.Select(
            Gen.Select(Gen.Double[1, 1.6], Gen.Double[0, 50], Gen.Double[0, 200], Gen.Double[-0.5, 0.95], Gen.Double[10, 800]).Array[1, 5], Gen.Double[1, 1.6], Gen.ULong)
        .Sample((layers, below, seed) =>
        {
            var result = Follow(new SlabCase
            {
                Layers = [.. layers.Select(layer => new LayerOptics(layer.Item1, layer.Item2, layer.Item3, layer.Item4, layer.Item5))],
                IndexBelow = below,
                Photons = 20_000,
                Seed = seed,
            });
            var all = result.SpecularReflectance + result.DiffuseReflectance + result.TotalTransmittance + result.Absorbed + result.Roulette;
            return Math.Abs(all - 1) < 1e-9 && Math.Abs(result.Roulette) < 0.02;
        }, iter: 100);

    [Fact]
    public void The_result_is_the_same_to_the_last_bit_whatever_the_threads()
    {
        var slab = Slab(new LayerOptics(1.37, 1, 100, 0.9, 200), new LayerOptics(1.5, 1, 10, 0, 100)) with { Photons = 300_000 };
        var (one, two) = (Follow(slab, threads: 1), Follow(slab, threads: 3));
        Assert.Equal(one.AbsorbedByLayer, two.AbsorbedByLayer);
        Assert.Equal(one with { AbsorbedByLayer = [] }, two with { AbsorbedByLayer = [] });
        Assert.NotEqual(one.DiffuseReflectance, Follow(slab with { Seed = 2 }).DiffuseReflectance);
    }

    /// <summary>Without absorption light wanders through a thick layer for hours: the work must stop when asked, and not at the end of a block.</summary>
    [Fact]
    public void Light_that_wanders_without_end_can_be_stopped()
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(200));
        Assert.ThrowsAny<OperationCanceledException>(() => SlabTransport.Of(Slab(new LayerOptics(1.5, 0, 1e6, 0, 1e6)), 1, null, stop.Token));
    }

    /// <summary>An error told is an error made: runs from other seeds scatter as much as they say.</summary>
    [Fact]
    public void Its_standard_errors_are_the_scatter_of_its_runs()
    {
        var slab = Slab(new LayerOptics(1.5, 10, 90, 0.75, 200)) with { Photons = 20_000 };
        SlabResult[] runs = [.. Enumerable.Range(0, 200).Select(seed => Follow(slab with { Seed = (ulong)seed }))];
        Told(run => run.DiffuseReflectance, run => run.DiffuseReflectanceError);
        Told(run => run.TotalTransmittance, run => run.TotalTransmittanceError);
        Told(run => run.UnscatteredTransmittance, run => run.UnscatteredTransmittanceError);
        Told(run => run.Absorbed, run => run.AbsorbedError);

        void Told(Func<SlabResult, double> figure, Func<SlabResult, double> error)
        {
            var mean = runs.Average(figure);
            var scatter = Math.Sqrt(runs.Sum(run => Math.Pow(figure(run) - mean, 2)) / (runs.Length - 1));
            Assert.InRange(runs.Average(error) / scatter, 0.82, 1.22);
        }
    }

    [Fact]
    public void More_absorption_never_lets_more_through() => Gen.Select(Gen.Double[0, 40], Gen.Double[0.5, 40], Gen.Double[0, 0.9]).Sample((absorption, more, anisotropy) =>
        Through(absorption + more, anisotropy) < Through(absorption, anisotropy), iter: 20);

    [Theory]
    [InlineData(0.9, 1, 1, 0, 10)]
    [InlineData(1.5, -1, 1, 0, 10)]
    [InlineData(1.5, 1, 1, 1, 10)]
    [InlineData(1.5, 1, 1, 0, 0)]
    [InlineData(1.5, 0, 0, 0, Endless)]
    [InlineData(1.5, double.NaN, 1, 0, 10)]
    public void A_layer_that_cannot_be_is_refused(double index, double absorption, double scattering, double anisotropy, double thicknessUm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Follow(Slab(new LayerOptics(index, absorption, scattering, anisotropy, thicknessUm))));

    private static double Through(double absorption, double anisotropy) =>
        Follow(Slab(new LayerOptics(1.5, absorption, 60, anisotropy, 300)) with { Photons = 100_000 }).TotalTransmittance;

    private static SlabResult Follow(SlabCase slab, int? threads = null) => SlabTransport.Of(slab, threads, cancel: TestContext.Current.CancellationToken);

    private static void Holds(double reference, double found, double error) =>
        Assert.True(Math.Abs(found - reference) <= (4 * error) + ReferenceError, $"{found} against {reference}, standard error {error}");

    private static SlabCase Slab(params LayerOptics[] layers) => new() { Layers = layers, Photons = Photons, Seed = 1 };
}
