using CsCheck;
using Silkwright.Light;

namespace Silkwright.Tests.Light;

/// <summary>Light through film, coat and threads, against flat layers, independent programs and its own balance.</summary>
public class StencilTransportTests
{
    private const long Photons = 400_000;

    /// <summary>What a reference of five digits may be off by itself, beside four standard errors of the run.</summary>
    private const double ReferenceError = 2e-4;

    /// <summary>
    /// Slabs of the layered program's own table (van de Hulst 1980, table 35; adding-doubling at 32 directions): without threads the stencil is a slab. Back is specular and diffuse together.
    /// </summary>
    [Theory]
    [InlineData(1.0, 10, 90, 0.75, 200, 0.09739, 0.66096)]
    [InlineData(1.5, 10, 90, 0.75, 200, 0.12683, 0.49317)]
    [InlineData(1.5, 1, 99, 0.9, 500, 0.22774, 0.61612)]
    [InlineData(1.4, 50, 50, 0.9, 100, 0.03895, 0.54511)]
    [InlineData(1.5, 1, 99, 0, 200, 0.44654, 0.47008)]
    public void Without_threads_it_is_the_slab_of_the_tables(double index, double absorption, double scattering, double anisotropy, double thicknessUm, double reflectance, double transmittance)
    {
        var result = Follow(Bare(new TurbidMedium(index, absorption, scattering, anisotropy), thicknessUm));
        Holds(reflectance, result.Back);
        Holds(transmittance, result.Backing);
    }

    /// <summary>Film carrier, air and coat: the same three layers by the layered program, which has its own checks.</summary>
    [Fact]
    public void Film_and_gap_are_layers_as_the_layered_program_has_them()
    {
        var coat = new TurbidMedium(1.52, 100, 300, 0.85);
        var stencil = Follow(Bare(coat, 70) with { FilmIndex = 1, CarrierUm = 100, GapUm = 10 });
        // The carrier is film above and of the film's index; here both are air, and the layered program has nothing above the coat.
        var slab = SlabTransport.Of(new SlabCase { Layers = [new LayerOptics(1.52, 100, 300, 0.85, 70)], Photons = Photons, Seed = 3 }, cancel: TestContext.Current.CancellationToken);
        Alike(slab.SpecularReflectance + slab.DiffuseReflectance, slab.DiffuseReflectanceError, stencil.Back);
        Alike(slab.TotalTransmittance, slab.TotalTransmittanceError, stencil.Backing);
        Alike(slab.Absorbed, slab.AbsorbedError, stencil.Coat);

        var inFilm = Follow(Bare(coat, 70) with { FilmIndex = 1.5, GapUm = 10 });
        var layers = SlabTransport.Of(
            new SlabCase { IndexAbove = 1.5, Layers = [new LayerOptics(1, 0, 1e-9, 0, 10), new LayerOptics(1.52, 100, 300, 0.85, 70)], Photons = Photons, Seed = 3 }, cancel: TestContext.Current.CancellationToken);
        Alike(layers.SpecularReflectance + layers.DiffuseReflectance, layers.DiffuseReflectanceError, inFilm.Back);
        Alike(layers.TotalTransmittance, layers.TotalTransmittanceError, inFilm.Backing);
    }

    /// <summary>A slab on a backing of its own index that throws half back: a Monte Carlo of another hand, 0.26653 back, 0.58827 into the backing, 0.14520 absorbed.</summary>
    [Fact]
    public void A_backing_throws_light_back_as_an_independent_program_has_it()
    {
        var result = Follow(Bare(new TurbidMedium(1.5, 5, 100, 0.85), 100) with { BackingIndex = 1.5, BackingReflectance = 0.5 });
        Holds(0.26653, result.Back);
        Holds(0.58827, result.Backing);
        Holds(0.14520, result.Coat);
    }

    /// <summary>Threads of the coat's own stuff are no threads, whatever fields and surfaces a photon crosses on its way.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(22.5)]
    public void Threads_made_of_the_coat_change_nothing(double angleDegrees)
    {
        var medium = new TurbidMedium(1.5, 60, 300, 0.8);
        var bare = Follow(Bare(medium, 62) with { Photons = 4 * Photons });
        var woven = Follow(Bare(medium, 5) with { Weave = new StencilWeave { PitchUm = 83, ThreadUm = 34, ThicknessUm = 53, Thread = medium, AngleDegrees = angleDegrees }, SqueegeeSideUm = 4 });
        Alike(bare.Back.Value, bare.Back.StandardError, woven.Back);
        Alike(bare.Backing.Value, bare.Backing.StandardError, woven.Backing);
        Alike(bare.Coat.Value, bare.Coat.StandardError, new(woven.Coat.Value + woven.Threads.Value, woven.Coat.StandardError));
        Alike(bare.ClearDose[12].Value, bare.ClearDose[12].StandardError, woven.ClearDose[12]);
        Alike(bare.LineSpreadSqueegeeSideUm.Value, bare.LineSpreadSqueegeeSideUm.StandardError, woven.LineSpreadSqueegeeSideUm);
    }

    /// <summary>What the coat swallows is its dose times its absorption: two sums out of different events.</summary>
    [Fact]
    public void The_dose_times_absorption_is_what_the_coat_swallows()
    {
        var stencil = Stencil(dyed: true);
        var result = Follow(stencil);
        var share = new CoatShareByDots(stencil);
        var swallowed = Enumerable.Range(0, result.DepthsUm.Count)
            .Sum(i => result.ClearDose[i].Value * share.Of(i, result.DepthsUm.Count) * stencil.StencilUm / result.DepthsUm.Count * stencil.Coat.AbsorptionPerCm * 1e-4);
        Assert.InRange(swallowed / result.Coat.Value, 0.993, 1.007);
    }

    /// <summary>How far light goes sideways, against a scalar program that follows one photon at a time with the classic formulas.</summary>
    [Fact]
    public void Light_goes_as_far_sideways_as_in_a_program_of_one_photon_at_a_time()
    {
        var medium = new TurbidMedium(1, 10, 90, 0.75);
        var result = Follow(Bare(medium, 200));
        var last = result.DepthsUm.Count - 1;
        double[] places = [10, 50, 150];
        foreach (var (x, (dose, error)) in places.Zip(OnePhotonAtATime.DosesBeyond(medium, 200, result.DepthsUm.Count, places, 200_000)))
        {
            var own = result.Dose[last][Enumerable.Range(0, result.PlacesUm.Count).MinBy(i => Math.Abs(result.PlacesUm[i] - x))].StandardError;
            Assert.InRange(result.DoseAt(last, x) - dose, -4 * (error + own), 4 * (error + own));
        }
    }

    [Fact]
    public void No_light_is_lost_or_made() => Gen.Select(
            Gen.Select(Gen.Double[1, 1.6], Gen.Double[1, 300], Gen.Double[0, 400], Gen.Double[-0.5, 0.95]).Array[2], Gen.Double[0, 30], Gen.Double[0, 60], Gen.Double[1, 1.95], Gen.Double[0, 1], Gen.Double[0, 90], Gen.ULong)
        .Sample((media, gap, lamp, thickness, reflectance, angle, seed) =>
        {
            var result = Follow(new StencilCase
            {
                Lamp = LampLight.Tubes(lamp),
                GapUm = gap,
                CarrierUm = gap > 15 ? 100 : 0,
                Coat = Of(media[0]),
                PrintSideUm = gap,
                Weave = new StencilWeave { PitchUm = 100, ThreadUm = 50, ThicknessUm = 50 * thickness, Thread = Of(media[1]), AngleDegrees = angle },
                BackingReflectance = reflectance,
                Photons = 20_000,
                Seed = seed,
            });
            var all = result.Back.Value + result.Backing.Value + result.Coat.Value + result.Threads.Value + result.Roulette;
            return Math.Abs(all - 1) < 1e-9 && Math.Abs(result.Roulette) < 0.03 && result.Dose.All(row => row.All(dose => double.IsFinite(dose.Value)));

            static TurbidMedium Of((double Index, double Absorption, double Scattering, double Anisotropy) m) => new(m.Index, m.Absorption, m.Scattering, m.Anisotropy);
        }, iter: 60);

    [Fact]
    public void The_result_is_the_same_to_the_last_bit_whatever_the_threads()
    {
        var stencil = Stencil(dyed: false) with { Photons = 60_000 };
        var (one, three) = (Follow(stencil, threads: 1), Follow(stencil, threads: 3));
        Assert.Equal(one.Dose.SelectMany(row => row), three.Dose.SelectMany(row => row));
        Assert.Equal(one.Undercuts, three.Undercuts);
        Assert.Equal((one.Back, one.Backing, one.Coat, one.Threads, one.Roulette, one.Through), (three.Back, three.Backing, three.Coat, three.Threads, three.Roulette, three.Through));
        Assert.NotEqual(one.Back, Follow(stencil with { Seed = 2 }).Back);
    }

    /// <summary>An error told is an error made: runs from other seeds scatter as much as they say.</summary>
    [Fact]
    public void Its_standard_errors_are_the_scatter_of_its_runs()
    {
        var stencil = Stencil(dyed: true) with { Photons = 32_000, Lamp = LampLight.Tubes() };
        StencilResult[] runs = [.. Enumerable.Range(0, 60).Select(seed => Follow(stencil with { Seed = (ulong)seed }))];
        Told(run => run.Back);
        Told(run => run.Threads);
        Told(run => run.ClearDose[0]);
        Told(run => run.Through.InOpenings);
        Told(run => run.UndercutWhere(0.25).UndercutUm);
        Told(run => run.LineSpreadSqueegeeSideUm);

        void Told(Func<StencilResult, Sampled> figure)
        {
            var values = runs.Select(run => figure(run).Value).ToArray();
            var mean = values.Average();
            var scatter = Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1));
            Assert.InRange(runs.Average(run => figure(run).StandardError) / scatter, 0.7, 1.45);
        }
    }

    [Fact]
    public void Work_stops_when_asked()
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(200));
        Assert.ThrowsAny<OperationCanceledException>(() => StencilTransport.Of(Bare(new TurbidMedium(1.5, 0, 1e6, 0), 1000), 1, null, stop.Token));
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        var good = Stencil(dyed: true);
        Refused(good with { Photons = 1 });
        Refused(good with { GapUm = -1 });
        Refused(good with { BackingReflectance = 1.1 });
        Refused(good with { FilmIndex = double.NaN });
        Refused(good with { Coat = good.Coat with { Anisotropy = 1 } });
        Refused(good with { Weave = good.Weave! with { PitchUm = 30 } });
        Refused(good with { Weave = good.Weave! with { ThicknessUm = 80 } });
        Refused(good with { Image = new FilmImage(FilmImageKind.Line) });
        Refused(good with { Lamp = new LampLight { HalfAngleDegrees = 60, SlantDegrees = 45 } });

        static void Refused(StencilCase stencil) => Assert.Throws<ArgumentOutOfRangeException>(() => Follow(stencil));
    }

    private static StencilCase Stencil(bool dyed) => new()
    {
        Lamp = LampLight.Point(1000, 80),
        GapUm = 10,
        Coat = new TurbidMedium(1.52, 100, 300, 0.85),
        PrintSideUm = 6,
        Weave = new StencilWeave { PitchUm = 83.33, ThreadUm = 34, ThicknessUm = 52.7, Thread = new TurbidMedium(1.63, dyed ? 300 : 3, 50, 0.8) },
        SqueegeeSideUm = 3,
        Photons = Photons,
        Seed = 1,
    };

    private static StencilCase Bare(TurbidMedium coat, double thicknessUm) => new() { FilmIndex = 1, Coat = coat, PrintSideUm = thicknessUm, Photons = Photons, Seed = 1 };

    private static StencilResult Follow(StencilCase stencil, int? threads = null) => StencilTransport.Of(stencil, threads, cancel: TestContext.Current.CancellationToken);

    private static void Holds(double reference, Sampled found) => Alike(reference, ReferenceError / 4, found);

    private static void Alike(double reference, double error, Sampled found) => Assert.True(
        Math.Abs(found.Value - reference) <= 4 * (Math.Sqrt((error * error) + (found.StandardError * found.StandardError)) + (ReferenceError / 4)), $"{found} against {reference}, standard error {error}");
}
