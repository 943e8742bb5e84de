using Silkwright.Light;

namespace Silkwright.Tests.Light;

/// <summary>What an exposure cures, against the dose at single places.</summary>
public class DoseOutlineTests
{
    private static readonly StencilCase Stencil = new()
    {
        Lamp = LampLight.Tubes(),
        GapUm = 10,
        Coat = new TurbidMedium(1.52, 100, 300, 0.85),
        PrintSideUm = 60,
        Photons = 100_000,
        Seed = 1,
    };

    [Theory]
    [InlineData(FilmImageKind.Edge)]
    [InlineData(FilmImageKind.Line)]
    [InlineData(FilmImageKind.Gap)]
    public void On_the_outline_the_dose_is_the_one_asked_for(FilmImageKind kind)
    {
        var result = Follow(Stencil with { Image = kind == FilmImageKind.Edge ? FilmImage.Edge : new FilmImage(kind, 80) });
        var dose = 0.3 * result.ClearDose[0].Value;
        var outline = DoseOutline.Of(result, dose, 200);
        Assert.Equal(kind == FilmImageKind.Edge ? 1 : 2, outline.SidesUm.Count);
        Assert.All(outline.SidesUm, side => Assert.Equal(dose, result.DoseAt(0, side[0]), 1e-3));
    }

    [Fact]
    public void The_longer_the_exposure_the_narrower_the_line_and_the_wider_what_holds_in_a_gap()
    {
        var (line, gap) = (Follow(Stencil with { Image = new FilmImage(FilmImageKind.Line, 60) }), Follow(Stencil with { Image = new FilmImage(FilmImageKind.Gap, 60) }));
        double[] doses = [0.5, 0.3, 0.2, 0.1];
        Assert.All(Pairs(dose => DoseOutline.Of(line, dose, 200).SizeUm), pair => Assert.True(pair.Less >= pair.More));
        Assert.All(Pairs(dose => DoseOutline.Of(gap, dose, 200).SizeUm), pair => Assert.True(pair.Less <= pair.More));
        Assert.Equal(0, DoseOutline.Of(line, 1e-4, 200).SizeUm, 0.01);
        Assert.Equal(0, DoseOutline.Of(gap, 3, 200).SizeUm, 0.01);

        IEnumerable<(double Less, double More)> Pairs(Func<double, double> size) => doses.Select(size).Zip(doses.Skip(1).Select(size));
    }

    private static StencilResult Follow(StencilCase stencil) => StencilTransport.Of(stencil, cancel: TestContext.Current.CancellationToken);
}
