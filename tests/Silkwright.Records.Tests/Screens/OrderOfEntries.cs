using CsCheck;
using Silkwright.Records.Screens;
using static Silkwright.Records.Tests.Screens.Told;

namespace Silkwright.Records.Tests.Screens;

public sealed class OrderOfEntries
{
    private static readonly DateTimeOffset Later = Start.AddDays(1);

    [Theory]
    [InlineData("exposed", "never coated")]
    [InlineData("coated exposed exposed", "exposed already")]
    [InlineData("coated dryIn exposed", "still drying")]
    [InlineData("degreased dryIn coated", "still drying")]
    [InlineData("coated exposed coated", "another stencil")]
    [InlineData("coated degreased", "cannot be degreased")]
    [InlineData("dryIn dryIn", "drying already")]
    [InlineData("dryOut", "not put to dry")]
    [InlineData("coated checked", "never exposed")]
    [InlineData("coated printed", "never exposed")]
    [InlineData("coated broke", "cannot break down")]
    [InlineData("coated reclaimed climate", "reclaimed before")]
    [InlineData("coated exposed broke printed", "broke down before")]
    [InlineData("coated exposed broke reclaimed", "broke down before")]
    [InlineData("coated exposed stored degreased", "put away")]
    public void What_cannot_have_happened_is_a_problem_with_a_remedy(string entries, string what)
    {
        var words = entries.Split(' ');
        var told = By([.. words.Select((word, i) => ((double)i, StoryOfAScreen.Fact(word)))]);
        Assert.Empty(ScreenOrder.Faults([.. told.SkipLast(1)], Later));
        var problems = ScreenOrder.Faults(told, Later);
        Assert.Contains(problems, p => p.What.Contains(what, StringComparison.Ordinal));
        Assert.All(problems, p => Assert.Contains($"entry {words.Length}", p.Where, StringComparison.Ordinal));
        Assert.All(problems, p => Assert.NotEmpty(p.Remedy));
    }

    [Theory]
    [InlineData(-4.9, 0)]
    [InlineData(-5.1, 1)]
    public void Time_goes_back_by_no_more_than_clocks_differ(double minutes, int problems)
    {
        var told = By((0, new ScreenDegreased()), (minutes, new ClimateRead(40)));
        Assert.Equal(problems, ScreenOrder.Faults(told, Later).Count);
    }

    [Fact]
    public void Small_steps_back_do_not_add_up_to_a_large_one()
    {
        var told = By((0, new ScreenDegreased()), (-4, new ClimateRead(40)), (-8, new ClimateRead(41)));
        _ = Assert.Single(ScreenOrder.Faults(told, Later));
    }

    [Theory]
    [InlineData(4.9, 0)]
    [InlineData(5.1, 1)]
    public void Nothing_has_happened_that_is_yet_to_come(double minutes, int problems) =>
        Assert.Equal(problems, ScreenOrder.Faults(By((minutes, new ScreenDegreased())), Start).Count);

    [Fact]
    public void A_corrected_time_must_fit_its_place()
    {
        var told = By((0, new ScreenDegreased()), (60, StoryOfAScreen.Fact("coated")), (120, new DryingBegun())).ToList();
        told.Add(Entry(4, StoryOfAScreen.Fact("coated"), 200, corrects: 2));
        _ = Assert.Single(ScreenOrder.Faults(told, Later));
        told[3] = Entry(4, StoryOfAScreen.Fact("coated"), 90, corrects: 2);
        Assert.Empty(ScreenOrder.Faults(told, Later));
    }

    /// <summary>Whatever people try, in whatever order, with whatever corrections: what is accepted is a life a screen can have.</summary>
    [Fact]
    public void No_accepted_record_tells_an_impossible_life()
    {
        string[] words =
        [
            "tensioned", "degreased", "coated", "dryIn", "dryOut", "climate", "exposed", "checked", "rejected", "jobAssigned", "printed", "stored",
            "reclaimed", "broke", "withdrawn",
        ];
        var accepted = 0;
        Gen.Select(Gen.Int[0, words.Length - 1], Gen.Int[0, 12], Gen.Int[-10, 30]).Array[0, 30].Sample(tries =>
        {
            var record = new List<ScreenEvent>();
            foreach (var (word, back, minutes) in tries)
            {
                var target = record.Count - back;
                var corrects = words[word] == "withdrawn" ? Math.Max(1, target) : (int?)null;
                if (corrects > record.Count)
                    continue;
                var at = (record.Count == 0 ? 0 : (record[^1].At - Start).TotalMinutes) + minutes;
                var fact = corrects is null ? StoryOfAScreen.Fact(words[word]) : new EntryWithdrawn();
                var entry = Entry(record.Count + 1, fact, at, corrects);
                if (ScreenOrder.Faults([.. record, entry], Start.AddYears(1)).Count == 0)
                    record.Add(entry);
            }

            Interlocked.Add(ref accepted, record.Count);
            var story = ScreenStory.Of(record, Start.AddYears(1));
            var kinds = story.Entries.Select(e => e.Entry.Kind).ToList();
            Assert.True(!kinds.Contains(ScreenEventKind.Exposed) || kinds.IndexOf(ScreenEventKind.Coated) is >= 0 and var c && c < kinds.IndexOf(ScreenEventKind.Exposed));
            Assert.True(kinds.Count(k => k == ScreenEventKind.Exposed) <= 1);
            Assert.True(!kinds.Contains(ScreenEventKind.Printed) || kinds.IndexOf(ScreenEventKind.Exposed) is >= 0 and var e && e < kinds.IndexOf(ScreenEventKind.Printed));
            var final = story.Entries.Select(e => e.Entry.Fact).ToList().FindIndex(f => f is ScreenEnded { Reason: not EndReason.Stored });
            Assert.True(final < 0 || final == kinds.Count - 1);
            Assert.Equal(100L * kinds.Count(k => k == ScreenEventKind.Printed), story.Impressions);
            Assert.True(story.DryMinutes is null or >= 0);
        });
        Assert.True(accepted > 100, "hardly anything was accepted: the check has seen nothing");
    }
}
