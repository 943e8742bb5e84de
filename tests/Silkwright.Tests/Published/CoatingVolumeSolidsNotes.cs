using Silkwright.Ink;

namespace Silkwright.Tests.Published;

/// <summary>Worked examples of public coatings notes on volume solids and spreading rate.</summary>
public sealed class CoatingVolumeSolidsNotes
{
    private const double SquareFeetPerSquareMetre = 10.763910417;
    private const double LitresPerGallon = 3.785411784;

    /// <summary>Technical note on volume solids: 71 % and 125 µm dry take 176 µm wet, 5.68 m²/L.</summary>
    [Fact]
    public void Seventy_one_percent_and_125_um_dry()
    {
        var wet = InkFilm.WetUm(125, 71);

        Assert.Equal(176, wet, 0.5);
        Assert.Equal(5.68, InkFilm.SpreadingRateM2PerL(wet), 0.005);
        Assert.Equal(125, InkFilm.DryUm(wet, 71), 1e-9);
    }

    /// <summary>Note on spreading rate: 65 %, 125 µm (5 mil) dry is 5.2 m²/L, 208.52 ft²/gal; 100 µm dry is 153.85 µm wet.</summary>
    [Fact]
    public void Sixty_five_percent()
    {
        Assert.Equal(5.2, InkFilm.SpreadingRateM2PerL(InkFilm.WetUm(125, 65)), 0.05);
        Assert.Equal(153.85, InkFilm.WetUm(100, 65), 0.01);

        var squareFeetPerGallon = InkFilm.SpreadingRateM2PerL(InkFilm.WetUm(5.0 * 25.4, 65)) * SquareFeetPerSquareMetre * LitresPerGallon;
        // The note multiplies by 1604, which is 1604.17 rounded: 0.01 % of the figure.
        Assert.Equal(208.52, squareFeetPerGallon, 0.03);
    }

    /// <summary>Table of spreading rates, m²/L, printed to one decimal.</summary>
    [Theory]
    [InlineData(50, 25, 20)]
    [InlineData(50, 50, 10)]
    [InlineData(50, 100, 5)]
    [InlineData(50, 200, 2.5)]
    [InlineData(65, 25, 26.0)]
    [InlineData(65, 75, 8.7)]
    [InlineData(65, 150, 4.3)]
    [InlineData(65, 300, 2.2)]
    public void Table_of_spreading_rates(double volumeSolidsPercent, double dryUm, double expected) =>
        Assert.Equal(expected, InkFilm.SpreadingRateM2PerL(InkFilm.WetUm(dryUm, volumeSolidsPercent)), 0.0501);
}
