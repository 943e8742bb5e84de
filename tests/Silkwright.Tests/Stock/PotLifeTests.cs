using CsCheck;
using Silkwright.Emulsion;
using Silkwright.Stock;

namespace Silkwright.Tests.Stock;

public sealed class PotLifeTests
{
    private static readonly DateOnly Today = new(2026, 6, 15);

    private static readonly Gen<StencilEmulsion> Lots = Gen.Select(
        Gen.Int[0, 3], Gen.Int[0, 400], Gen.Int[0, 100], Gen.Bool, Gen.Double[-20, 50],
        (family, received, mixed, isMixed, celsius) => new StencilEmulsion
        {
            Id = "any",
            Family = (EmulsionFamily)family,
            ReceivedOn = Today.AddDays(-received),
            SensitisedOn = isMixed ? Today.AddDays(-Math.Min(mixed, received)) : null,
            StoredCelsius = celsius,
        });

    /// <summary>Halves for each 5.6 °C (10 °F) above 21 °C, a trade article: 42 days become 21, 10.5 and, at 37 °C, about 6.</summary>
    [Theory]
    [InlineData(21, 42, 0.001)]
    [InlineData(26.6, 21, 0.001)]
    [InlineData(32.2, 10.5, 0.001)]
    [InlineData(37, 6, 0.3)]
    public void Warmth_halves_the_life_of_a_mixed_lot(double celsius, double days, double tolerance) =>
        Assert.Equal(days, PotLife.LifeDays(Diazo(celsius) with { PotLifeDays = 42 }).Value, tolerance);

    /// <summary>Another article gives 3 days at 37 °C where the rule gives 6: the interval must hold both.</summary>
    [Fact]
    public void The_interval_at_37_degrees_holds_both_published_lives()
    {
        var life = PotLife.LifeDays(Diazo(37) with { PotLifeDays = 42 });

        Assert.InRange(3, life.Low, life.High);
        Assert.InRange(6, life.Low, life.High);
    }

    /// <summary>By the rule 5 °C would give 7 times the life; at most a doubling is counted until measured.</summary>
    [Theory]
    [InlineData(15.4, 84)]
    [InlineData(5, 84)]
    public void Cold_at_most_doubles_the_life(double celsius, double days) =>
        Assert.Equal(days, PotLife.LifeDays(Diazo(celsius) with { PotLifeDays = 42 }).Value, 0.001);

    [Fact]
    public void Cold_never_carries_a_mixed_lot_past_its_shelf_life()
    {
        var cold = Diazo(5) with { PotLifeDays = 60, ShelfLifeMonths = 3 };

        Assert.Equal(3 * 365.25 / 12, PotLife.LifeDays(cold).Value, 1e-9);
    }

    [Fact]
    public void A_hotter_store_never_lengthens_a_life() => Gen.Select(Lots, Gen.Double[0, 10]).Sample((lot, warmer) =>
    {
        var hotter = lot with { StoredCelsius = lot.StoredCelsius + warmer };
        var (cool, hot) = (PotLife.Of(lot, Today), PotLife.Of(hotter, Today));
        return hot.LifeDays.Value <= cool.LifeDays.Value + 1e-9
            && hot.DaysLeft!.Value <= cool.DaysLeft!.Value + 1e-9
            && (hot.Over || !cool.Over);
    });

    [Fact]
    public void A_later_day_never_brings_a_lot_back() => Gen.Select(Lots, Gen.Int[0, 500]).Sample((lot, days) =>
        PotLife.Of(lot, Today.AddDays(days)).Over || !PotLife.Of(lot, Today).Over);

    /// <summary>Four to six weeks once sensitised, trade articles: good at three weeks, over at seven.</summary>
    [Theory]
    [InlineData(21, false)]
    [InlineData(49, true)]
    public void A_mixed_lot_counts_from_mixing(int daysAgo, bool over)
    {
        var state = PotLife.Of(Diazo(21) with { SensitisedOn = Today.AddDays(-daysAgo) }, Today);

        Assert.Equal(over, state.Over);
        Assert.Equal(over, state.DaysLeft!.Value < 0);
    }

    [Fact]
    public void A_closed_lot_counts_from_receipt_and_still_tells_its_life_once_mixed()
    {
        var closed = PotLife.Of(Diazo(21) with { ReceivedOn = Today.AddDays(-100) }, Today);

        Assert.False(closed.Over);
        Assert.InRange(closed.LifeDays.Value, 28, 42);
        Assert.InRange(closed.DaysLeft!.Value, 200, 300);
        Assert.Contains(closed.Notes, note => note.Text.Contains("not mixed", StringComparison.Ordinal));
    }

    /// <summary>A ready-to-use emulsion keeps about two years (a trade article).</summary>
    [Theory]
    [InlineData(365, false)]
    [InlineData(1000, true)]
    public void Ready_to_use_counts_from_receipt(int daysAgo, bool over) => Assert.Equal(
        over,
        PotLife.Of(new StencilEmulsion { Id = "any", Family = EmulsionFamily.Photopolymer, ReceivedOn = Today.AddDays(-daysAgo) }, Today).Over);

    [Fact]
    public void A_base_past_its_shelf_life_is_over_however_freshly_mixed()
    {
        var stale = Diazo(21) with { ReceivedOn = Today.AddDays(-700), SensitisedOn = Today.AddDays(-1) };

        Assert.True(PotLife.Of(stale, Today).Over);
    }

    [Fact]
    public void Unknown_days_are_left_out_and_said()
    {
        var state = PotLife.Of(Diazo(null), Today);

        Assert.Null(state.DaysLeft);
        Assert.False(state.Over);
        Assert.Contains(state.Notes, note => note.Text.Contains("not known", StringComparison.Ordinal));
    }

    [Fact]
    public void Days_to_come_and_impossible_stores_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PotLife.Of(Diazo(21) with { SensitisedOn = Today.AddDays(1) }, Today));
        Assert.Throws<ArgumentOutOfRangeException>(() => PotLife.Of(Diazo(21) with { ReceivedOn = Today.AddDays(1) }, Today));
        Assert.Throws<ArgumentOutOfRangeException>(() => PotLife.Of(Diazo(90), Today));
        Assert.Throws<ArgumentOutOfRangeException>(() => PotLife.Of(Diazo(double.NaN), Today));
    }

    private static StencilEmulsion Diazo(double? celsius) =>
        new() { Id = "invented", Family = EmulsionFamily.Diazo, StoredCelsius = celsius };
}
