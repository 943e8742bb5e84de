using Silkwright.Exposure;
using Silkwright.Records.Screens;
using static Silkwright.Records.Tests.Screens.Told;

namespace Silkwright.Records.Tests.Screens;

public sealed class StoryOfAScreen
{
    private static readonly ScreenExposed Light = new(9, ExposureCount.Seconds);
    private static readonly ScreenCoated Coat = new("Wren 47");
    private static readonly ScreenPrinted Hundred = new(100);

    public static TheoryData<ScreenStage, string> Stages() => new()
    {
        { ScreenStage.Meshed, "" },
        { ScreenStage.Degreased, "degreased" },
        { ScreenStage.Drying, "degreased dryIn" },
        { ScreenStage.Degreased, "degreased dryIn dryOut" },
        { ScreenStage.Coated, "coated" },
        { ScreenStage.Drying, "coated dryIn" },
        { ScreenStage.Dry, "coated dryIn dryOut" },
        { ScreenStage.Dry, "coated dryIn dryOut climate jobAssigned" },
        { ScreenStage.Coated, "coated dryIn dryOut coated" },
        { ScreenStage.Exposed, "coated dryIn dryOut exposed" },
        { ScreenStage.Exposed, "coated exposed dryIn dryOut" },
        { ScreenStage.Ready, "coated exposed checked" },
        { ScreenStage.Printing, "coated exposed checked printed" },
        { ScreenStage.Stored, "coated exposed printed stored" },
        { ScreenStage.Ready, "coated exposed printed stored jobAssigned" },
        { ScreenStage.Reclaimed, "coated reclaimed" },
        { ScreenStage.Broken, "coated exposed printed broke" },
    };

    [Theory]
    [MemberData(nameof(Stages))]
    public void The_stage_is_where_the_entries_leave_it(ScreenStage expected, string entries)
    {
        var told = By([.. entries.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select((word, i) => ((double)i, Fact(word)))]);
        Assert.Empty(ScreenOrder.Faults(told, Start.AddDays(1)));
        Assert.Equal(expected, ScreenStory.Of(told, Start.AddDays(1)).Stage);
    }

    [Fact]
    public void Drying_before_the_coat_and_after_exposure_is_not_the_coats_drying()
    {
        var told = By(
            (0, new ScreenDegreased()), (5, new DryingBegun()), (25, new DryingEnded()), (30, Coat), (40, new DryingBegun()), (100, new DryingEnded()),
            (110, new DryingBegun()), (125, new DryingEnded()), (130, Light), (140, new DryingBegun()), (200, new DryingEnded()));
        // 60 min and 15 min, by hand
        Assert.Equal(75, ScreenStory.Of(told, Start.AddDays(1)).DryMinutes);
    }

    [Fact]
    public void What_is_still_drying_counts_up_to_now()
    {
        var told = By((0, Coat), (10, new DryingBegun()));
        Assert.Equal(35, ScreenStory.Of(told, Start.AddMinutes(45)).DryMinutes);
        Assert.Null(ScreenStory.Of(By((0, new ScreenDegreased())), Start).DryMinutes);
    }

    [Fact]
    public void Long_waits_are_told_with_their_limit_and_whether_they_are_over()
    {
        var told = By((0, Coat), (90, new DryingBegun()), (300, new DryingEnded()));
        var waits = ScreenStory.Of(told, Start.AddMinutes(300).AddDays(20)).LongWaits;
        // 90 min wet against 30; 20 days dry against 14
        Assert.Equal(
            [(ScreenEventKind.Coated, ScreenEventKind.DryIn, 90, 30, true), (ScreenEventKind.DryOut, ScreenEventKind.Exposed, 20 * 1440, 14 * 1440, false)],
            waits.Select(w => (w.After, w.Before, w.Minutes, w.LimitMinutes, w.Over)));
    }

    [Fact]
    public void Waits_within_their_limit_are_not_told()
    {
        var told = By((0, new ScreenDegreased()), (60, Coat), (70, new DryingBegun()), (300, new DryingEnded()), (400, Light), (50_000, Hundred));
        Assert.Empty(ScreenStory.Of(told, Start.AddDays(60)).LongWaits);
    }

    [Fact]
    public void A_correction_takes_the_place_of_what_it_corrects_and_a_withdrawal_empties_it()
    {
        var told = By((0, Coat), (10, Light), (20, Hundred), (30, Hundred)).ToList();
        told.Add(Entry(5, new ScreenPrinted(40), 20, corrects: 3));
        Assert.Equal(140, ScreenStory.Of(told, Start.AddDays(1)).Impressions);
        told.Add(Entry(6, new ScreenPrinted(45), 20, corrects: 5));
        Assert.Equal(145, ScreenStory.Of(told, Start.AddDays(1)).Impressions);
        told.Add(Entry(7, new EntryWithdrawn(), 20, corrects: 3));
        Assert.Equal(100, ScreenStory.Of(told, Start.AddDays(1)).Impressions);
        told.Add(Entry(8, new ScreenPrinted(50), 20, corrects: 7));
        var story = ScreenStory.Of(told, Start.AddDays(1));
        Assert.Equal(150, story.Impressions);
        Assert.Equal([1, 2, 3, 4], story.Entries.Select(e => e.Place));
        Assert.Equal([1, 2, 8, 4], story.Entries.Select(e => e.Entry.Sequence));
    }

    [Fact]
    public void The_order_in_which_entries_are_handed_over_does_not_matter()
    {
        var told = By((0, Coat), (10, Light), (20, Hundred), (30, new ScreenEnded(EndReason.Stored)));
        Assert.Equal(ScreenStory.Of(told, Start).Stage, ScreenStory.Of([.. told.Reverse()], Start).Stage);
        Assert.Equal([1, 2, 3, 4], ScreenStory.Of([.. told.Reverse()], Start).Entries.Select(e => e.Place));
    }

    internal static ScreenFact Fact(string word) => word switch
    {
        "tensioned" => new MeshTensioned(24),
        "degreased" => new ScreenDegreased(),
        "coated" => Coat,
        "dryIn" => new DryingBegun(),
        "dryOut" => new DryingEnded(),
        "climate" => new ClimateRead(45),
        "exposed" => Light,
        "checked" => new ScreenChecked(CheckResult.Good),
        "rejected" => new ScreenChecked(CheckResult.Rejected),
        "jobAssigned" => new JobAssigned("walk"),
        "printed" => Hundred,
        "stored" => new ScreenEnded(EndReason.Stored),
        "reclaimed" => new ScreenEnded(EndReason.Reclaimed),
        "broke" => new ScreenEnded(EndReason.Broke, "pinholes"),
        _ => throw new ArgumentOutOfRangeException(nameof(word), word, "no such entry"),
    };
}
