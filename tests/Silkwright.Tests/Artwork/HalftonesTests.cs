using Silkwright.Artwork;

namespace Silkwright.Tests.Artwork;

public class HalftonesTests
{
    /// <summary>A round dot just touches its neighbours at π/4 of the cell, where its diameter is the pitch. Geometry.</summary>
    [Fact]
    public void A_dot_as_wide_as_the_pitch_has_a_tone_of_78_and_a_half_percent()
    {
        Assert.Equal(78.5398, Halftones.TonePercent(50, 25_400 / 50.0), 4);
        Assert.Equal(508, Halftones.DotDiameterUm(50, 78.539816339), 4);
    }

    /// <summary>Worked example of a trade rule of thumb, smallest dot 117 µm: about 5 % at 55 lpi and 7 % at 65 lpi. Common practice, no source.</summary>
    [Theory]
    [InlineData(55, 5)]
    [InlineData(65, 7)]
    public void The_smallest_dot_of_a_fine_mesh_gives_the_lowest_tone_printers_expect(double lpi, double tonePercent) =>
        Assert.Equal(tonePercent, Math.Round(Halftones.TonePercent(lpi, 117)));
}
