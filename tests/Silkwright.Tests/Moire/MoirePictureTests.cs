using Silkwright.Mesh;
using Silkwright.Moire;

namespace Silkwright.Tests.Moire;

public class MoirePictureTests
{
    /// <summary>What passes is tone times open area: areas of lattices that do not lock. Geometry; 2 % for the part periods at the edges.</summary>
    [Fact]
    public void As_much_prints_as_tone_and_open_area_let_through()
    {
        var asked = new MoireCase { Mesh = new MeshFabric(61, 64), RulingPerCm = 45 / 2.54, AngleDegrees = 22.5, TonePercent = 30 };
        var picture = MoirePicture.Of(asked, 450, 280);
        var printed = 1 - (picture.Grey.Average(grey => grey) / 255);
        Assert.Equal(0.30 * Math.Pow(1 - (61 * 0.0064), 2), printed, 0.003);
    }

    [Fact]
    public void It_is_wide_enough_for_ten_beats_and_not_so_wide_that_dots_vanish()
    {
        var asked = new MoireCase { Mesh = new MeshFabric(43, 80), RulingPerCm = 45 / 2.54, AngleDegrees = 22.5 };
        var picture = MoirePicture.Of(asked, 90, 56);
        Assert.InRange(picture.WidthMm, 20, 80);
        Assert.Equal(Math.Max(20, 10 * Beats.Of(asked)[0].Vector.PeriodMm), picture.WidthMm, 1e-9);
    }
}
