using System.Globalization;
using Silkwright.Contracts;

namespace Silkwright.Tests.Contracts;

public sealed class GaugeStudyQuestionTests
{
    /// <summary>A hand that is there twice would have half the readings each, and the study another hand.</summary>
    [Theory]
    [InlineData("Ada", "ADA", true)]
    [InlineData("Ada Lund", "ada  lund", true)]
    [InlineData("Ren\u00e9e", "Rene\u0301e", true)]
    [InlineData("Ada", "Ida", false)]
    public void Somebody_who_reads_is_one_by_any_spelling(string one, string other, bool same)
    {
        var (twice, once) = (Study(one, other), Study(one, one));
        Assert.Equal(same, GaugeStudyDocument.Of(once)["repeatabilityUm"]!.ToJsonString() == GaugeStudyDocument.Of(twice)["repeatabilityUm"]!.ToJsonString());
        Assert.Equal(same ? 2 : 3, (int)GaugeStudyDocument.Of(twice)["operators"]!);
        Assert.Equal(same, twice.Study.Notes.Any(note => note.Text == $"'{one}' is also spelled '{other}' and was taken as one person."));
    }

    [Fact]
    public void Two_who_may_be_one_by_a_slip_are_told() =>
        Assert.Contains(Study("Johanna", "Johana").Study.Notes, note => note.Text.StartsWith("'Johana' and 'Johanna' were taken as two people", StringComparison.Ordinal));

    /// <summary>Five screens, each read twice by one hand in two spellings and twice by another.</summary>
    private static GaugeStudyAnswer Study(string one, string other)
    {
        var rows = from screen in Enumerable.Range(1, 5)
                   from hand in new[] { (Name: one, Um: 0.0), (Name: other, Um: 0.4), (Name: "Bram", Um: 0.9), (Name: "Bram", Um: 1.2) }
                   select string.Create(CultureInfo.InvariantCulture, $"S-{screen},{hand.Name},{90 + (screen * 1.5) + hand.Um + (screen % 2 * 0.1)}");
        return GaugeStudyQuestion.Of(GaugeReader.Read("screen,operator,coated (um)\n" + string.Join('\n', rows) + "\n", "study.csv"), cancel: TestContext.Current.CancellationToken);
    }
}
