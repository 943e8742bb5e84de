using CsCheck;
using Silkwright.Emulsion;

namespace Silkwright.Tests.Emulsion;

public sealed class LightSafetyTests
{
    /// <summary>Slow emulsions forgive stray white light. Common practice, no source.</summary>
    [Fact]
    public void A_slower_emulsion_never_fogs_sooner() =>
        Gen.Select(Gen.Double[0.05, 1.5], Gen.Double[0.05, 1.5], Gen.Int[0, 2]).Sample((one, other, light) =>
            Minutes(Math.Max(one, other), (RoomLight)light) >= Minutes(Math.Min(one, other), (RoomLight)light));

    /// <summary>Reciprocity: the same dose in half the light takes twice the time.</summary>
    [Fact]
    public void Half_the_light_leaves_twice_the_time()
    {
        var emulsion = new StencilEmulsion { Id = "any", Family = EmulsionFamily.DualCure };
        foreach (var light in Enum.GetValues<RoomLight>())
        {
            var (dim, bright) = (LightSafety.Minutes(light, emulsion, 200), LightSafety.Minutes(light, emulsion, 400));
            Assert.Equal(2, dim.Value / bright.Value, 9);
            Assert.True(dim.High / dim.Low < LightSafety.Minutes(light, emulsion).High / LightSafety.Minutes(light, emulsion).Low, "a reading narrows it");
        }
    }

    [Fact]
    public void Whiter_light_always_leaves_less_time()
    {
        foreach (var family in Enum.GetValues<EmulsionFamily>())
        {
            var emulsion = new StencilEmulsion { Id = "any", Family = family };
            var minutes = new[] { RoomLight.White, RoomLight.Filtered, RoomLight.Yellow }
                .Select(light => LightSafety.Minutes(light, emulsion).Value).ToArray();

            Assert.True(minutes[0] < minutes[1] && minutes[1] < minutes[2]);
        }
    }

    /// <summary>
    /// A half-covered coupon left 30 min in a fit work light shows no edge, and filtered tubes harden a screen left too long (a
    /// trade article, and common practice): yellow light must pass the coupon for every family, white for none.
    /// </summary>
    [Fact]
    public void Yellow_light_passes_the_coupon_test_and_white_light_fails_it()
    {
        foreach (var family in Enum.GetValues<EmulsionFamily>())
        {
            var emulsion = new StencilEmulsion { Id = "any", Family = family };

            Assert.True(LightSafety.Minutes(RoomLight.Yellow, emulsion).Value > 30);
            Assert.True(LightSafety.Minutes(RoomLight.White, emulsion).Value < 30);
        }
    }

    private static double Minutes(double relativeExposure, RoomLight light) => LightSafety.Minutes(
        light, new StencilEmulsion { Id = "any", Family = EmulsionFamily.Photopolymer, RelativeExposure = relativeExposure }).Value;
}
