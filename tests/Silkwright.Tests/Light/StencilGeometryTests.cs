using Silkwright.Light;

namespace Silkwright.Tests.Light;

/// <summary>Light that is not scattered: shadows, gaps, openings and threads, against geometry.</summary>
public class StencilGeometryTests
{
    private static readonly TurbidMedium Clear = new(1.5, 0, 0, 0);

    [Fact]
    public void Straight_light_leaves_the_films_own_edge()
    {
        var result = Follow(Coated(40) with { Coat = Clear with { AbsorptionPerCm = 100 } });
        foreach (var undercut in result.Undercuts)
            Assert.InRange(undercut.UndercutUm.Value, -0.02, 0.02);
        Assert.Equal(0, result.DoseAt(0, 0.05));
        Assert.Equal(result.ClearDose[0].Value, result.DoseAt(0, -0.05), 9);
    }

    /// <summary>
    /// Gap × tan θ' behind Snell's law at n = 1.5, a film of 100 µm the wrong way round: 6, 35, 53 and 71 µm at 5, 30, 45 and 60 degrees, docs/engines/exposure.md, equation 6.
    /// The coat is thin, so that its own depth adds nothing; the steps there are 3 in a hundred wide.
    /// </summary>
    [Theory]
    [InlineData(5, 5.820)]
    [InlineData(30, 35.355)]
    [InlineData(45, 53.452)]
    [InlineData(60, 70.711)]
    public void Slanting_light_reaches_under_the_film_by_gap_and_tangent(double degrees, double undercutUm)
    {
        var result = Follow(Coated(0.5) with { FilmIndex = 1.5, CarrierUm = 100, Lamp = new LampLight { SlantDegrees = degrees } });
        Assert.InRange(result.UndercutWhere(0.5).UndercutUm.Value / undercutUm, 0.97, 1.03);
    }

    /// <summary>
    /// An even cone over direction cosines: the light that goes sideways by x or more through a film of index n is a segment of the disc of sine s, s' = n sin atan(x/gap) off the middle
    /// where light falls in the plane; over all azimuths a plain double sum here.
    /// </summary>
    [Theory]
    [InlineData(60)]
    [InlineData(30)]
    public void A_cone_of_light_blurs_the_edge_as_its_disc_says(double halfAngle)
    {
        const double gap = 100;
        var result = Follow(Coated(0.5) with { FilmIndex = 1.5, CarrierUm = gap, Coat = Clear with { AbsorptionPerCm = 1 }, BackingIndex = 1.5, Lamp = LampLight.Tubes(halfAngle), Photons = 400_000 });
        foreach (var x in new[] { 5.0, 15, 25 })
            Assert.Equal(Beyond(x), result.DoseAt(0, x) / result.ClearDose[0].Value, 4e-3);

        double Beyond(double x)
        {
            var (beyond, all, sine) = (0.0, 0.0, Math.Sin(halfAngle * Math.PI / 180) / 1.5);
            const int parts = 800;
            for (var i = 0; i < parts; i++)
            {
                for (var j = 0; j < parts; j++)
                {
                    var (sx, sy) = (sine * ((2 * (i + 0.5) / parts) - 1), sine * ((2 * (j + 0.5) / parts) - 1));
                    if ((sx * sx) + (sy * sy) > sine * sine)
                        continue;
                    // The dose is light over its cosine to the surface.
                    var cosine = Math.Sqrt(1 - (sx * sx) - (sy * sy));
                    all += 1 / cosine;
                    beyond += gap * sx / cosine >= x ? 1 / cosine : 0;
                }
            }

            return beyond / all;
        }
    }

    /// <summary>
    /// Straight light between black threads is the open area. First three: published fabrics of 225 threads an inch, 42, 33 and 27 % to a whole percent; the others (1 − d/p)² unrounded.
    /// </summary>
    [Theory]
    [InlineData(112.8889, 40, 0.42, 0.005)]
    [InlineData(112.8889, 48, 0.33, 0.005)]
    [InlineData(112.8889, 54, 0.27, 0.005)]
    [InlineData(83.3333, 34, 0.35046, 2e-4)]
    [InlineData(232.5581, 80, 0.43033, 2e-4)]
    [InlineData(129.8701, 48, 0.39741, 2e-4)]
    public void Straight_light_between_black_threads_is_the_open_area(double pitchUm, double threadUm, double openArea, double within)
    {
        var result = Follow(Woven(pitchUm, threadUm, 1.55 * threadUm, Clear with { AbsorptionPerCm = 1e6 }));
        Assert.Equal(openArea, result.Backing.Value, within + (4 * result.Backing.StandardError));
        Assert.Equal(0, result.Through.BehindThreads.Value, 1e-9);
        Assert.Equal(1, result.Through.InOpenings.Value, 4 * result.Through.InOpenings.StandardError);
    }

    /// <summary>The mean chord of a circle is π d/4 (Cauchy); two layers of threads without overlap hold π d²/(2p) of thread over each place.</summary>
    [Fact]
    public void The_mean_way_through_threads_is_a_quarter_of_pi_of_their_thickness()
    {
        const double pitch = 100;
        const double thread = 40;
        const double perUm = 1e-4;
        var result = Follow(Woven(pitch, thread, 2 * thread, Clear with { AbsorptionPerCm = 1e4 * perUm }) with { Photons = 4_000_000 });
        var way = 2 * (thread / pitch) * (Math.PI / 4) * thread;
        // Second order of 1 − exp(−µ way), the mean of the way's square, is below a thousandth part here.
        Assert.Equal(way * perUm, result.Threads.Value, (4 * result.Threads.StandardError) + (2e-3 * way * perUm));
    }

    /// <summary>Slanting light through half-clear threads at an angle to the edge, against a march along straight lines in small steps that asks at every place whether it is thread.</summary>
    [Theory]
    [InlineData(0, 0, 1.55)]
    [InlineData(40, 0, 1.55)]
    [InlineData(40, 30, 1.55)]
    [InlineData(60, 22.5, 2)]
    public void The_weave_stands_where_the_model_says(double slant, double angle, double thicknessPerThread)
    {
        var stencil = Woven(90, 40, 40 * thicknessPerThread, Clear with { AbsorptionPerCm = 200 }) with { Lamp = new LampLight { SlantDegrees = slant }, PrintSideUm = 7 };
        stencil = stencil with { Weave = stencil.Weave! with { AngleDegrees = angle } };
        var result = Follow(stencil);
        var through = March(stencil, Math.Asin(Math.Sin(slant * Math.PI / 180) / 1.5), angle * Math.PI / 180);
        Assert.Equal(through, result.Backing.Value, (4 * result.Backing.StandardError) + 1e-3);
    }

    /// <summary>
    /// Straight light bent by clear threads of another index, against a scalar march in small steps with Snell's and Fresnel's laws where the stuff changes. Its 40,000 rays are good
    /// for two thousandths.
    /// </summary>
    [Fact]
    public void Clear_threads_bend_light_as_round_lenses_do()
    {
        var stencil = Woven(90, 40, 62, Clear with { RefractiveIndex = 1.63 }) with { SqueegeeSideUm = 40 };
        var result = Follow(stencil);
        var last = result.DepthsUm.Count - 1;
        double[] places = [1, 3, 8];
        foreach (var (x, marched) in places.Zip(BentLight.SharesBeyond(stencil, places, stencil.StencilUm * (last + 0.5) / (last + 1))))
            Assert.Equal(marched, result.DoseAt(last, x) / result.ClearDose[last].Value, 6e-3);
    }

    /// <summary>What a line leaves dark and a gap lets in are the edge twice: lines and gaps of any width add up to clear film.</summary>
    [Fact]
    public void A_line_and_the_gap_of_its_width_make_clear_film()
    {
        var edge = Coated(40) with { Coat = new TurbidMedium(1.5, 100, 300, 0.8), Lamp = LampLight.Tubes() };
        var (line, gap) = (Follow(edge with { Image = new FilmImage(FilmImageKind.Line, 60) }), Follow(edge with { Image = new FilmImage(FilmImageKind.Gap, 60) }));
        foreach (var x in new[] { -20.0, 0, 5, 30, 60, 90 })
            Assert.Equal(line.ClearDose[3].Value, line.DoseAt(3, x) + gap.DoseAt(3, x - 60), 5e-3 * line.ClearDose[3].Value);
        Assert.InRange(line.DoseAt(0, 30) / line.ClearDose[0].Value, 0, 0.2);
    }

    /// <summary>Light from single sources in an array falls in as many steps as sources are seen.</summary>
    [Fact]
    public void An_array_of_diodes_draws_an_edge_for_each()
    {
        // Tangents 0 and ±0.5 in air across the edge: places 0 and ±100 tan of Snell's angle.
        var result = Follow(Coated(0.5) with { FilmIndex = 1.5, CarrierUm = 100, Lamp = LampLight.Diodes(distanceMm: 20, pitchMm: 10) });
        var place = 100 * Math.Tan(Math.Asin(Math.Sin(Math.Atan(0.5)) / 1.5));
        Assert.Equal(result.DoseAt(0, 2), result.DoseAt(0, place - 2), 1e-9);
        Assert.Equal(0, result.DoseAt(0, place + 2));
        Assert.True(result.DoseAt(0, 2) > 0.1);
    }

    private static double March(StencilCase stencil, double slant, double angle)
    {
        const int starts = 60;
        const double step = 0.25;
        var (sum, count) = (0.0, 0);
        // Straight light in the film's frame lies along x; the weave is turned under it.
        var (du, dv) = (Math.Sin(slant) * Math.Cos(angle), -Math.Sin(slant) * Math.Sin(angle));
        var pitch = stencil.Weave!.PitchUm;
        for (var i = 0; i < 2 * starts; i++)
        {
            for (var j = 0; j < starts; j++)
            {
                var inThread = 0.0;
                for (var way = step / 2; way * Math.Cos(slant) < stencil.StencilUm; way += step)
                    inThread += WeaveByPlaces.IsThread(stencil, (pitch * (i + 0.5) / starts) + (way * du), (pitch * (j + 0.5) / starts) + (way * dv), way * Math.Cos(slant)) ? step : 0;
                sum += Math.Exp(-inThread * stencil.Weave.Thread.AbsorptionPerCm * 1e-4);
                count++;
            }
        }

        return sum / count;
    }

    private static StencilCase Coated(double thicknessUm) => new() { FilmIndex = 1, Coat = Clear with { AbsorptionPerCm = 10 }, PrintSideUm = thicknessUm, Photons = 60_000, Seed = 1 };

    private static StencilCase Woven(double pitchUm, double threadUm, double thicknessUm, TurbidMedium thread) => new()
    {
        FilmIndex = 1.5,
        BackingIndex = 1.5,
        Coat = Clear,
        PrintSideUm = 5,
        SqueegeeSideUm = 5,
        Weave = new StencilWeave { PitchUm = pitchUm, ThreadUm = threadUm, ThicknessUm = thicknessUm, Thread = thread },
        Photons = 400_000,
        Seed = 1,
    };

    private static StencilResult Follow(StencilCase stencil) => StencilTransport.Of(stencil, cancel: TestContext.Current.CancellationToken);
}
