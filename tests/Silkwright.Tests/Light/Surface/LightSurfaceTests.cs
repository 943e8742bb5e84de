using System.Diagnostics;
using Silkwright.Light;
using Silkwright.Light.Surface;
using Silkwright.Mesh;

namespace Silkwright.Tests.Light.Surface;

/// <summary>The fitted light against fresh photons at places it has never seen.</summary>
public class LightSurfaceTests
{
    /// <summary>Another seed than the surface's own: other places and other photons.</summary>
    private const ulong FreshSeed = 20261129;

    private const int Fresh = 60;

    private const long Photons = 60_000;

    /// <summary>
    /// Photons followed now are the reference; nine of ten places shall lie within the error that the file states: of 60, chance leaves 48 and more. Where too few photons arrive to read a dose, or
    /// a saw-tooth is lost in chance, there is nothing to hold against.
    /// </summary>
    [Fact]
    public void Fresh_photons_lie_within_the_stated_error_as_often_as_stated()
    {
        var places = SurfaceDesign.Places(Fresh, FreshSeed);
        var fresh = places.Select((place, i) => StencilTransport.Of(place.Case(Photons, FreshSeed + (ulong)i), cancel: TestContext.Current.CancellationToken)).ToArray();
        foreach (var (name, of) in SurfacePlaces.Figures)
        {
            var allowed = Math.Log(1 + (LightSurface.Usual.ErrorPercent[name] / 100));
            var told = Enumerable.Range(0, Fresh).Where(i => IsTold(name, fresh[i])).ToArray();
            var off = told.Select(i => Math.Abs(Math.Log((of(LightSurface.Usual.At(places[i])) + Shift(name)) / (of(SurfaceFigures.Of(fresh[i])) + Shift(name))))).ToArray();
            TestContext.Current.TestOutputHelper!.WriteLine(
                $"{name}: {off.Count(x => x <= allowed)} of {off.Length} within {LightSurface.Usual.ErrorPercent[name]:0.0} %, the middle one {100 * (Math.Exp(off.Order().ElementAt(off.Length / 2)) - 1):0} %");
            Assert.True(off.Count(x => x <= allowed) >= 0.8 * off.Length, name);
        }
    }

    private static bool IsTold(string name, StencilResult result) => name switch
    {
        "throughMean" => result.Through.Average.StandardError < 0.1 * result.Through.Average.Value,
        "throughWorst" => result.Through.Worst.StandardError < 0.1 * result.Through.Worst.Value,
        "sawtoothUm" => result.UndercutWhere(0.15).SawtoothUm is var tooth && tooth.StandardError < SurfaceBuild.MostChance * (tooth.Value + 0.5),
        _ => true,
    };

    /// <summary>What shops have most: where the figures that windows are made of must be good, not only on the whole.</summary>
    [Theory]
    [InlineData(120, 34, true, 5, 5)]
    [InlineData(120, 34, false, 5, 5)]
    [InlineData(90, 48, true, 10, 30)]
    [InlineData(61, 64, false, 15, 5)]
    [InlineData(43, 80, true, 20, 50)]
    public void On_common_meshes_it_tells_what_photons_do(double count, double thread, bool dyed, double printSide, double halfAngle)
    {
        var place = SurfacePlaces.Common(new MeshFabric(count, thread, dyed)) with { PrintSideUm = printSide, HalfAngleDegrees = halfAngle };
        var (told, fresh) = (LightSurface.Usual.At(place), SurfaceFigures.Follow(place, 300_000, FreshSeed, cancel: TestContext.Current.CancellationToken));
        foreach (var (name, of) in SurfacePlaces.Figures.Where(figure => !figure.Name.StartsWith("saw", StringComparison.Ordinal) && !figure.Name.StartsWith("line", StringComparison.Ordinal)))
        {
            var twice = 2 * LightSurface.Usual.ErrorPercent[name] / 100;
            Assert.InRange((of(told) + Shift(name)) / (of(fresh) + Shift(name)), 1 / (1 + twice), 1 + twice);
        }
    }

    /// <summary>The film the wrong way round: its 100 µm times the tangent in film, by hand from Snell's law; the trade's table. A disc's edge is dim, so that most of it counts.</summary>
    [Theory]
    [InlineData(5, 6)]
    [InlineData(30, 35)]
    [InlineData(45, 53)]
    [InlineData(60, 71)]
    public void A_film_the_wrong_way_round_undercuts_as_the_trades_table_says(double halfAngle, double um)
    {
        var place = SurfacePlaces.Common(new MeshFabric(120, 34, Dyed: true)) with { GapUm = 0, HalfAngleDegrees = halfAngle };
        var more = LightSurface.Usual.At(place with { CarrierUm = 100 }).UndercutAt15Um - LightSurface.Usual.At(place).UndercutAt15Um;
        Assert.InRange(more, 0.35 * um, 1.1 * um);
    }

    [Fact]
    public void A_file_says_the_same_when_read_again()
    {
        var again = SurfaceFile.Read(SurfaceFile.Write(LightSurface.Usual));
        var place = SurfacePlaces.Common(new MeshFabric(77, 55));
        Assert.Equal(LightSurface.Usual.At(place), again.At(place));
        Assert.Equal(LightSurface.Usual.Build, again.Build);
        Assert.Throws<FormatException>(() => SurfaceFile.Read("""{"schema":"silkwright/plan/1"}"""));
    }

    [Fact]
    public void What_lies_outside_is_named_and_told_at_the_nearest_place()
    {
        var place = SurfacePlaces.Common(new MeshFabric(120, 34));
        Assert.Empty(SurfaceRange.Outside(place));
        Assert.Equal(["coat on the print side"], SurfaceRange.Outside(place with { PrintSideUm = 200, CoatAbsorptionPerCm = 60 }));
        Assert.Equal(LightSurface.Usual.At(place with { PrintSideUm = 60 }), LightSurface.Usual.At(place with { PrintSideUm = 90 }));
        Assert.Equal(["absorption lengths of the coat"], SurfaceRange.Outside(SurfacePlaces.Common(new MeshFabric(10, 260)) with { CoatAbsorptionPerCm = 280 }));
    }

    [Fact]
    public void A_place_is_told_within_a_thousandth_of_a_second()
    {
        var place = SurfacePlaces.Common(new MeshFabric(120, 34));
        LightSurface.Usual.At(place);
        var begun = Stopwatch.GetTimestamp();
        for (var i = 0; i < 200; i++)
            LightSurface.Usual.At(place with { PrintSideUm = 3 + (0.1 * i) });
        Assert.True(Stopwatch.GetElapsedTime(begun).TotalMilliseconds < 200);
    }

    [Fact]
    public void It_is_built_the_same_again_and_can_be_stopped()
    {
        var build = new SurfaceBuild(60, 1000, 3);
        var token = TestContext.Current.CancellationToken;
        Assert.Equal(SurfaceFile.Write(build.Run(cancel: token)), SurfaceFile.Write(build.Run(cancel: token)));
        Assert.ThrowsAny<OperationCanceledException>(() => build.Run(cancel: new CancellationToken(canceled: true)));
    }

    /// <summary>Lengths are told to half a µm and a share.</summary>
    private static double Shift(string name) => name.EndsWith("Um", StringComparison.Ordinal) ? 0.5 : 0;
}
