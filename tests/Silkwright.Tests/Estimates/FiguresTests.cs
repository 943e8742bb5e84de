using Silkwright.Drying;
using Silkwright.Estimates;

namespace Silkwright.Tests.Estimates;

public class FiguresTests
{
    private static string Plain(string figures) => figures.Replace('\u202f', ' ');

    [Theory]
    [InlineData(6.2, 4.6, 7.9, "6.2", "4.6 to 7.9")]
    [InlineData(31.4, 26.2, 38.1, "31", "26 to 38")]
    [InlineData(8_731, 3_020, 27_400, "9 000", "3 000 to 27 000")]
    [InlineData(26_743, 12_308, 50_156, "27 000", "12 000 to 50 000")]
    [InlineData(0.241, 0.181, 0.311, "0.24", "0.18 to 0.31")]
    [InlineData(178, 46, 686, "180", "50 to 690")]
    [InlineData(302, 19, 3_104, "300", "20 to 3 100")]
    [InlineData(40, 3.8, 430, "40", "4 to 430")]
    [InlineData(1.3, 0.02, 3, "1.3", "0.0 to 3.0")]
    public void A_number_has_no_more_digits_than_its_interval_carries(double value, double low, double high, string said, string interval)
    {
        var estimate = new Estimate(value, low, high, Ground.Model);
        Assert.Equal(said, Plain(Figures.Value(estimate)));
        Assert.Equal(interval, Plain(Figures.Interval(estimate)));
    }

    [Theory]
    [InlineData(0, "0")]
    [InlineData(64, "64")]
    [InlineData(1.89 + 0.0004, "1.89")]
    [InlineData(14_400, "14 400")]
    [InlineData(-7.25, "−7.25")]
    public void A_number_without_an_interval_keeps_three_digits_and_a_whole_one_all(double value, string said)
    {
        Assert.Equal(said, Plain(Figures.Exact(value)));
        Assert.Equal("", Figures.Interval(Estimate.Exact(value, Ground.Model)));
    }

    [Theory]
    [InlineData(45, "45 min")]
    [InlineData(110, "1 h 50")]
    [InlineData(120, "2 h")]
    [InlineData(60 * 72, "3 days")]
    public void Minutes_are_said_as_people_say_them(double minutes, string said) => Assert.Equal(said, Figures.Minutes(minutes));

    [Fact]
    public void A_time_that_was_cut_off_is_a_week_or_never()
    {
        var drying = new Estimate(71, 46, DryingTime.LongestMinutes, Ground.CommonPractice);
        Assert.Equal("46 min to a week or never", Figures.MinutesInterval(drying));
        Assert.Equal("30 to 70 min", Figures.MinutesInterval(new Estimate(45, 30, 70, Ground.Model)));
    }

    [Fact]
    public void A_chance_that_nobody_could_tell_has_no_digits()
    {
        var never = new Estimate(0.0172, 0.00634, 0.0468, Ground.CommonPractice);
        Assert.Equal("under 0.1", Figures.Chance(never));
        Assert.Equal("", Figures.ChanceInterval(never));
        var nearlySure = new Estimate(99.821, 99.468, 99.949, Ground.CommonPractice);
        Assert.Equal("99.8, 99.5 to 99.9", $"{Figures.Chance(nearlySure)}, {Figures.ChanceInterval(nearlySure)}");
        Assert.Equal("12", Figures.Chance(new Estimate(11.9, 4.7, 26.9, Ground.CommonPractice)));
    }

    [Theory]
    [InlineData(0.302, -7.42, 8.02, "about as much")]
    [InlineData(6.65, 0.53, 12.8, "7 more")]
    [InlineData(-6.65, -12.8, -0.53, "7 less")]
    public void A_difference_is_told_only_where_its_digits_reach(double value, double low, double high, string said) =>
        Assert.Equal(said, Figures.More(new Estimate(value, low, high, Ground.Model)));

    /// <summary>1 mil = 25.4 µm exactly (international yard and pound agreement, 1959).</summary>
    [Fact]
    public void A_length_in_a_sentence_stands_in_both_units() =>
        Assert.Equal("102 µm (4.0 mil)", Figures.Length(new Estimate(101.6, 83, 120, Ground.CommonPractice)));

    [Fact]
    public void A_bound_that_must_be_reached_is_rounded_up()
    {
        Assert.Equal(150, Figures.Up(new Estimate(144, 111, 222, Ground.CommonPractice)), 9);
        Assert.Equal(102, Figures.Up(new Estimate(102, 83, 167, Ground.CommonPractice)), 9);
    }
}
