using Silkwright.Emulsion;
using Silkwright.Light;
using Silkwright.Mesh;

namespace Silkwright.Tests.Light;

/// <summary>What every screen room knows, at the usual optics. Common practice, docs/engines/light.md: no figure has a source, the order of things has.</summary>
public class StencilTradeTests
{
    [Fact]
    public void White_mesh_spreads_light_further_than_dyed()
    {
        var (white, dyed) = (Follow(Screen(120, 34, dyed: false)), Follow(Screen(120, 34, dyed: true)));
        Further(dyed.UndercutWhere(0.1).UndercutUm, white.UndercutWhere(0.1).UndercutUm);
        Further(dyed.LineSpreadSqueegeeSideUm, white.LineSpreadSqueegeeSideUm);
    }

    /// <summary>Dyed mesh asks for 1.3 to 2.2 times the exposure of white mesh.</summary>
    [Theory]
    [InlineData(120, 34)]
    [InlineData(77, 48)]
    public void Dyed_mesh_asks_for_about_half_as_much_again(double count, double thread)
    {
        var (white, dyed) = (Follow(Screen(count, thread, dyed: false)), Follow(Screen(count, thread, dyed: true)));
        Assert.InRange(white.Through.Worst.Value / dyed.Through.Worst.Value, 1.3, 2.6);
    }

    [Fact]
    public void Behind_dyed_threads_the_squeegee_side_gets_less()
    {
        var dyed = Follow(Screen(120, 34, dyed: true));
        Further(dyed.Through.BehindThreads, dyed.Through.InOpenings);
        Further(dyed.Through.Worst, dyed.Through.Average);
    }

    [Fact]
    public void A_backing_that_throws_light_back_cures_through_sooner_and_spreads_more()
    {
        var screen = Screen(120, 34, dyed: true);
        var (black, bright) = (Follow(screen), Follow(screen with { BackingReflectance = 0.8 }));
        Further(black.Through.Worst, bright.Through.Worst);
        Further(black.UndercutWhere(0.05).UndercutUm, bright.UndercutWhere(0.05).UndercutUm);
    }

    [Fact]
    public void The_wider_the_lamps_light_the_more_it_undercuts()
    {
        var screen = Screen(120, 34, dyed: true);
        Sampled[] undercuts = [.. new[] { 2.5, 15, 30, 60 }.Select(half => Follow(screen with { Lamp = LampLight.Tubes(half) }).UndercutWhere(StencilShares.WellExposed).UndercutUm)];
        Assert.All(undercuts.Zip(undercuts.Skip(1)), pair => Further(pair.First, pair.Second));
    }

    [Fact]
    public void A_film_the_wrong_way_round_undercuts_more()
    {
        var screen = Screen(120, 34, dyed: true) with { Lamp = LampLight.Tubes(30) };
        Further(Follow(screen).UndercutWhere(0.25).UndercutUm, Follow(screen with { CarrierUm = 100 }).UndercutWhere(0.25).UndercutUm);
    }

    /// <summary>Too thin a coat over the mesh gives saw-teeth.</summary>
    [Fact]
    public void The_thinner_the_coat_over_the_mesh_the_more_its_edge_saws()
    {
        var screen = Screen(43, 80, dyed: false);
        Further(Follow(screen with { PrintSideUm = 30 }).UndercutWhere(0.05).SawtoothUm, Follow(screen with { PrintSideUm = 2 }).UndercutWhere(0.05).SawtoothUm);
    }

    /// <summary>Saw-teeth are seen mainly at 43 threads a centimetre and below. Light alone bears that out on dyed mesh; on white mesh fine threads carry it as unevenly.</summary>
    [Fact]
    public void Under_the_same_coat_a_coarse_dyed_mesh_saws_more_than_a_fine_one()
    {
        Further(Saw(120, 34), Saw(43, 80));

        Sampled Saw(double count, double thread) =>
            Follow(Screen(count, thread, dyed: true) with { PrintSideUm = 2, Lamp = LampLight.Tubes(), Photons = 3 * Photons }).UndercutWhere(0.1).SawtoothUm;
    }

    [Fact]
    public void Through_a_coarse_mesh_light_spreads_further() =>
        Further(Follow(Screen(120, 34, dyed: false)).LineSpreadSqueegeeSideUm, Follow(Screen(43, 80, dyed: false)).LineSpreadSqueegeeSideUm);

    [Fact]
    public void More_coat_over_the_mesh_lets_less_through()
    {
        var screen = Screen(77, 48, dyed: true);
        Further(Follow(screen with { PrintSideUm = 30 }).Through.Worst, Follow(screen).Through.Worst);
    }

    private const long Photons = 400_000;

    private static StencilCase Screen(double count, double thread, bool dyed) => new()
    {
        Lamp = LampLight.Point(1000, 90),
        GapUm = 10,
        Coat = UsualOptics.Coat(EmulsionFamily.DualCure),
        PrintSideUm = 0.15 * 1.55 * thread,
        Weave = StencilWeave.Of(new MeshFabric(count, thread), UsualOptics.Thread(dyed), 0),
        SqueegeeSideUm = 3,
        BackingReflectance = UsualOptics.BlackBlanket.Value,
        Photons = Photons,
        Seed = 1,
    };

    private static StencilResult Follow(StencilCase stencil) => StencilTransport.Of(stencil, cancel: TestContext.Current.CancellationToken);

    /// <summary>More than chance could make of it.</summary>
    private static void Further(Sampled less, Sampled more) =>
        Assert.True(more.Value - less.Value > 4 * Math.Sqrt((less.StandardError * less.StandardError) + (more.StandardError * more.StandardError)), $"{less} against {more}");
}
