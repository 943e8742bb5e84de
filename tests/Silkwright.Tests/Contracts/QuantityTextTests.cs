using System.Globalization;
using CsCheck;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>
/// Conversions are held to the exact definitions of the units: 1 in = 25.4 mm (international yard and pound agreement, 1959),
/// K = °C + 273.15 and °F = 9/5 °C + 32 (NIST Special Publication 811, appendix B), 1 US gallon = 231 in³ and
/// 1 lb = 0.45359237 kg (NIST Handbook 44, appendix C), 1 inHg = 3386.389 Pa (NIST SP 811, rounded there).
/// </summary>
public sealed class QuantityTextTests
{
    private readonly ProblemList problems = new();

    public static TheoryData<string, double, QuantityKind> Conversions => new()
    {
        { "64um", 64, QuantityKind.Thickness },
        { "64 µm", 64, QuantityKind.Thickness },
        { "64 μm", 64, QuantityKind.Thickness },
        { "2.5mil", 63.5, QuantityKind.Thickness },
        { "0.1mm", 100, QuantityKind.Thickness },
        { "0.002in", 50.8, QuantityKind.Thickness },
        { "61/cm", 61, QuantityKind.PerLength },
        { "254/in", 100, QuantityKind.PerLength },
        { "254 lpi", 100, QuantityKind.PerLength },
        { "30C", 30, QuantityKind.Temperature },
        { "86F", 30, QuantityKind.Temperature },
        { "86 °F", 30, QuantityKind.Temperature },
        { "-40F", -40, QuantityKind.Temperature },
        { "−40 °F", -40, QuantityKind.Temperature },
        { "90s", 90, QuantityKind.Time },
        { "2min", 120, QuantityKind.Time },
        { "1.5h", 5400, QuantityKind.Time },
        { "50%", 50, QuantityKind.Share },
        { "101325Pa", 101325, QuantityKind.Pressure },
        { "1013.25 mbar", 101325, QuantityKind.Pressure },
        { "29.92126inHg", 101325, QuantityKind.Pressure },
        { "300m", 300, QuantityKind.Height },
        { "1000ft", 304.8, QuantityKind.Height },
        { "900cm2", 900, QuantityKind.Area },
        { "10 in²", 64.516, QuantityKind.Area },
        { "0.09m2", 900, QuantityKind.Area },
        { "1.2g/cm3", 1.2, QuantityKind.Density },
        { "1200 kg/m³", 1.2, QuantityKind.Density },
        { "10lb/gal", 10 * 453.59237 / (231 * 2.54 * 2.54 * 2.54), QuantityKind.Density },
        { "22.5deg", 22.5, QuantityKind.Angle },
        { "22.5°", 22.5, QuantityKind.Angle },
        { "100fpm", 0.508, QuantityKind.Speed },
        { "25N/cm", 25, QuantityKind.Tension },
        { "1e7", 1e7, QuantityKind.Number },
        { " 600 ", 600, QuantityKind.Number },
    };

    [Theory]
    [MemberData(nameof(Conversions))]
    public void A_quantity_is_read_in_its_own_unit(string text, double expected, QuantityKind kind)
    {
        var value = QuantityText.Read(text, kind, "here", problems);
        Assert.Empty(problems.Problems);
        Assert.NotNull(value);
        Assert.Equal(expected, value.Value, Math.Max(1e-9, Math.Abs(expected) * 1e-6));
    }

    [Fact]
    public void A_bare_number_is_refused_and_the_units_taken_are_listed()
    {
        Assert.Null(QuantityText.Read("64", QuantityKind.PerLength, "--count", problems));
        var problem = Assert.Single(problems.Problems);
        Assert.Equal("--count", problem.Where);
        Assert.Contains("no unit", problem.What, StringComparison.Ordinal);
        Assert.All(QuantityKind.PerLength.Units, unit => Assert.Contains(unit.Spelling, problem.Remedy, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("64 parsec")]
    [InlineData("64C")]
    [InlineData("2,5mil")]
    [InlineData("2 500um")]
    [InlineData("61 1/cm")]
    [InlineData("um")]
    [InlineData("")]
    [InlineData("NaN um")]
    [InlineData("1e999um")]
    [InlineData("64um64um")]
    [InlineData("0x40um")]
    public void What_is_not_a_thickness_is_a_fault_with_a_remedy(string text)
    {
        Assert.Null(QuantityText.Read(text, QuantityKind.Thickness, "here", problems));
        var problem = Assert.Single(problems.Problems);
        Assert.Contains(QuantityKind.Thickness.Example, problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_decimal_comma_is_named_as_the_fault()
    {
        QuantityText.Read("2,5mil", QuantityKind.Thickness, "here", problems);
        Assert.Contains("point", problems.Problems[0].Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("60..85%")]
    [InlineData("60%..85%")]
    [InlineData("60 % .. 85 %")]
    [InlineData("60…85%")]
    public void A_range_is_its_middle_between_its_ends(string text)
    {
        var share = QuantityText.ReadEstimate(text, QuantityKind.Share, "here", problems);
        Assert.Empty(problems.Problems);
        Assert.NotNull(share);
        Assert.Equal((60, 72.5, 85), (share.Low, share.Value, share.High));
        Assert.Equal(Ground.MeasuredHere, share.Ground);
    }

    [Fact]
    public void One_value_is_an_estimate_without_spread()
    {
        var share = QuantityText.ReadEstimate("35%", QuantityKind.Share, "here", problems);
        Assert.NotNull(share);
        Assert.Equal((35, 35, 35), (share.Low, share.Value, share.High));
    }

    [Theory]
    [InlineData("85..60%", "backwards")]
    [InlineData("60..85", "no unit")]
    [InlineData("60..85C", "not a unit")]
    public void A_faulty_range_is_one_fault(string text, string said)
    {
        Assert.Null(QuantityText.ReadEstimate(text, QuantityKind.Share, "here", problems));
        Assert.Contains(said, Assert.Single(problems.Problems).What, StringComparison.Ordinal);
    }

    [Fact]
    public void The_machines_language_does_not_matter()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(63.5, QuantityText.Read("2.5mil", QuantityKind.Thickness, "here", problems));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Every_unit_reads_back_what_was_written_in_it_and_any_text_is_value_or_fault()
    {
        Gen.String[Gen.Char["0123456789.,+-eEumilCF%/ µ°"], 0, 12].Sample(text =>
        {
            var found = new ProblemList();
            var value = QuantityText.Read(text, QuantityKind.Thickness, "here", found);
            return value is { } read ? double.IsFinite(read) && found.IsEmpty : found.Problems.Count == 1;
        });
    }
}
