using Silkwright.Gauging;

namespace Silkwright.Tests.Gauging;

public sealed class ScreenMeansTests
{
    private static readonly GaugeEntry Ines = new() { Screen = "S-1", Operator = "Ines", Trough = "round", Emulsion = "Wren 47", Strokes = "P S", On = new(2026, 11, 24), EomUm = 11 };

    [Fact]
    public void One_screen_of_one_day_and_hand_is_one_coat_however_the_hand_is_spelled()
    {
        var coat = Assert.Single(ScreenMeans.Of([Ines, Ines with { Operator = "INES", Trough = " Round", Emulsion = "wren  47", EomUm = 13 }]));
        Assert.Equal((12.0, "Ines", "round", "Wren 47"), (coat.EomUm, coat.Operator, coat.Trough, coat.Emulsion));
    }

    [Theory]
    [InlineData("Inez", "round")]
    [InlineData("Ines", "sharp")]
    [InlineData(null, "round")]
    public void Another_hand_or_trough_is_another_coat(string? person, string trough) =>
        Assert.Equal(2, ScreenMeans.Of([Ines, Ines with { Operator = person, Trough = trough, EomUm = 13 }]).Count);
}
