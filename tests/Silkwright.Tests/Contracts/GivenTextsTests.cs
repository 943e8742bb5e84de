using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

public sealed class GivenTextsTests
{
    private static readonly QuantityField Strokes = new("strokes", QuantityKind.Number, "strokes of the squeegee") { Least = 1, Whole = true };
    private static readonly QuantityField Coverage = new("coverage", QuantityKind.Share, "share that prints") { Above = 0, Most = 100, TakesRange = true };
    private static readonly ChoiceField Ink = ChoiceField.Of<InkKind>("ink", "what the ink is made of");

    private static GivenTexts Given(params (string Name, string Text)[] texts) => new(texts.ToDictionary(t => t.Name, t => t.Text), "--");

    [Fact]
    public void All_faults_are_told_at_once()
    {
        var given = Given(("strokes", "0"), ("coverage", "120%"), ("ink", "tar"), ("count", "61"));
        given.Read(Strokes);
        given.ReadEstimate(Coverage);
        given.Read<InkKind>(Ink);
        given.ReadRequired(MeshQuestion.Count);
        given.ReadRequired(MeshQuestion.Thread);
        var fault = Assert.Throws<InputProblemException>(given.ThrowIfAny);
        Assert.Equal(["--strokes", "--coverage", "--ink", "--count", "--thread"], fault.Problems.Select(p => p.Where));
    }

    [Theory]
    [InlineData("1.5", "a whole number at least 1")]
    [InlineData("-2", "a whole number at least 1")]
    public void A_count_must_be_whole_and_in_range(string text, string range)
    {
        var given = Given(("strokes", text));
        given.Read(Strokes);
        Assert.Contains(range, Assert.Single(given.Problems.Problems).Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0%")]
    [InlineData("50..101%")]
    public void Both_ends_of_a_range_are_held_to_the_limits(string text)
    {
        var given = Given(("coverage", text));
        Assert.Null(given.ReadEstimate(Coverage));
        Assert.Contains("above 0% and at most 100%", Assert.Single(given.Problems.Problems).Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("waterBased")]
    [InlineData("water-based")]
    [InlineData("Water Based")]
    public void Words_are_read_with_or_without_hyphens(string text) =>
        Assert.Equal(InkKind.WaterBased, Given(("ink", text)).Read<InkKind>(Ink));

    [Fact]
    public void An_unknown_word_lists_those_taken()
    {
        var given = Given(("ink", "tar"));
        given.Read<InkKind>(Ink);
        Assert.Contains("plastisol, waterBased, discharge, solvent, uv", given.Problems.Problems[0].Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void An_optional_field_that_is_not_given_is_no_fault()
    {
        var given = Given();
        Assert.Null(given.Read(Strokes));
        Assert.Null(given.ReadEstimate(Coverage));
        Assert.True(given.Problems.IsEmpty);
    }
}
