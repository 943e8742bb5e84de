using Silkwright.Artwork;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

public class SpotWordsTests
{
    private static readonly FilmSpot Spot = new()
    {
        XMm = 10,
        YMm = 20,
        IsImage = true,
        WidthUm = 180,
        PixelUm = 10,
        IsWidest = false,
        DiscXMm = 10,
        DiscYMm = 20,
    };

    /// <summary>A mesh of 61 threads of 64 µm: three threads, 192 µm, are its smallest line; 2 threads and an opening, 228 µm, its smallest dot (common practice, no source).</summary>
    private static readonly HeldWidths Held = HeldWidths.Of(WovenMesh.Of(new MeshFabric(61, 64)));

    [Theory]
    [InlineData(true, 180, 10, "Prints, 180 wide, 170 to 190 as a pixel either way may have it. The mesh holds lines from 192: this is finer and may be lost.")]
    [InlineData(true, 185, 10, "this is within a pixel of that.")]
    [InlineData(true, 200, 10, "this is within a pixel of that.")]
    [InlineData(true, 203, 10, "this is wide enough.")]
    [InlineData(false, 180, 10, "Gap, 180 wide, 170 to 190 as a pixel either way may have it. The mesh holds gaps from 192: this is finer and may fill in.")]
    public void A_spot_is_told_with_its_interval_and_held_against_the_mesh(bool isImage, double widthUm, double pixelUm, string says) =>
        Assert.EndsWith(says, Words(Spot with { IsImage = isImage, WidthUm = widthUm, PixelUm = pixelUm }), StringComparison.Ordinal);

    [Fact]
    public void In_a_halftone_dots_are_judged_by_their_own_rule()
    {
        Assert.Contains("This lies in a halftone. The mesh holds dots from 228: this is finer", Words(Spot with { WidthUm = 200, IsInHalftone = true }), StringComparison.Ordinal);
        Assert.Contains("This lies in a halftone. The mesh holds holes from 228: this is finer", Words(Spot with { WidthUm = 200, IsInHalftone = true, IsImage = false }), StringComparison.Ordinal);
        Assert.Contains("holds lines from 192", Words(Spot with { WidthUm = 200 }), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stencil_that_holds_less_than_the_mesh_decides_for_what_must_stay_open_alone()
    {
        var held = HeldWidths.Of(192, 228, 300);
        Assert.Equal((300, 192, 300, 228), (held.LineUm, held.GapUm, held.DotUm, held.HoleUm));
        Assert.Contains("The stencil at its aim holds lines from 300", SpotWords.Of(Spot, SpotVerdict.Of(Spot, held), Plain), StringComparison.Ordinal);
        Assert.Contains("The mesh holds gaps from 192", SpotWords.Of(Spot with { IsImage = false }, SpotVerdict.Of(Spot with { IsImage = false }, held), Plain), StringComparison.Ordinal);
    }

    [Fact]
    public void A_speck_is_told_with_what_is_about_it_and_a_wide_spot_as_at_least_so_wide() =>
        Assert.StartsWith(
            "A black speck of four pixels or fewer, left out; about it is gap, at least 5000 wide. The mesh holds gaps from 192: this is wide enough.",
            Words(Spot with { IsImage = false, IsSpeck = true, WidthUm = 5000, IsWidest = true }), StringComparison.Ordinal);

    private static string Words(FilmSpot spot) => SpotWords.Of(spot, SpotVerdict.Of(spot, Held), Plain);

    private static string Plain(double um) => um.ToString("0", System.Globalization.CultureInfo.InvariantCulture);
}
