using Silkwright.Answers;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Life;
using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>Finishes, reclaiming, wiping and lamps as a catalogue tells of them, in the answer.</summary>
public sealed class FinishTests
{
    private static readonly StencilEmulsion Plover = new()
    {
        Id = "Plover",
        Family = EmulsionFamily.DualCure,
        Resists = [InkKind.Plastisol, InkKind.WaterBased],
    };

    /// <summary>A hardened screen is usually not reclaimed: its mesh is paid for. Common practice, no source.</summary>
    [Fact]
    public void Every_finish_has_its_price_and_a_hardened_one_its_mesh()
    {
        var handling = Assert.Single(Ask(InkKind.WaterBased, Plover).Handling);

        Assert.Equal([StencilFinish.None, StencilFinish.PostExposed, StencilFinish.Hardened], handling.Finishes.Select(option => option.Finish));
        Assert.Equal(handling.Finish, handling.Finishes.MinBy(option => option.Cost.Total.Value)!.Finish);
        var (plain, hardened) = (handling.Finishes[0], handling.Finishes[2]);
        Assert.True(hardened.MeshLost && !plain.MeshLost);
        Assert.True(hardened.Cost.Case.ReclaimPerScreen.Value > plain.Cost.Case.ReclaimPerScreen.Value);
        Assert.True(hardened.FinishPercent.Value > plain.FinishPercent.Value);
        Assert.Contains("its mesh is lost", FinishWords.Of(hardened, "EUR"), StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_is_told_to_harden_is_told_what_hardeners_do()
    {
        var answer = Ask(InkKind.Discharge, [Plover with { Resists = [InkKind.Discharge], Hardening = Hardening.Needed }], run: 4000);

        Assert.Equal(StencilFinish.Hardened, answer.Plan.Finish);
        Assert.Contains(answer.Plan.Cautions, caution => caution.Text.Contains("safety data sheet", StringComparison.Ordinal) && caution.Step == "Before hardening");
        Assert.Contains(answer.Plan.Because, reason => reason.Contains("only when hardened", StringComparison.Ordinal));
    }

    [Fact]
    public void A_coat_that_takes_no_hardener_is_not_offered_one() =>
        Assert.DoesNotContain(Ask(InkKind.WaterBased, Plover with { Hardening = Hardening.None }).Handling[0].Finishes, option => option.Finish == StencilFinish.Hardened);

    [Fact]
    public void A_coat_that_needs_a_hardener_lasts_less_without()
    {
        Assert.True(Plain(Plover with { Hardening = Hardening.Needed }) < Plain(Plover));

        static double Plain(StencilEmulsion emulsion) => Ask(InkKind.WaterBased, emulsion).Handling[0].Finishes[0].FinishPercent.Value;
    }

    /// <summary>Harder to reclaim is dearer, and a stencil that stays in the mesh costs the mesh. Common practice, no source.</summary>
    [Fact]
    public void The_harder_it_comes_off_the_dearer()
    {
        double[] costs = [.. new Reclaiming?[] { Reclaiming.Easy, null, Reclaiming.Hard, Reclaiming.No }.Select(Cost)];

        Assert.Equal(costs.Order(), costs);
        Assert.Equal(costs.Length, costs.Distinct().Count());

        static double Cost(Reclaiming? reclaim) => Ask(InkKind.Plastisol, Plover with { Reclaim = reclaim }).Contenders[0].Cost.Reclaim.Value;
    }

    [Fact]
    public void Wiping_with_what_attacks_it_rules_it_out_and_with_what_wears_it_shortens_its_life()
    {
        var poor = Plover with { ResistsCleaner = new(ResistanceGrade.Poor, Ground.Datasheet) };
        var fair = Plover with { ResistsCleaner = new(ResistanceGrade.Fair, Ground.Datasheet) };

        Assert.NotNull(Ask(InkKind.Plastisol, poor).Plan.Emulsion);
        Assert.Contains("attack it", Assert.Single(Ask(InkKind.Plastisol, [poor], PressWash.Solvent).Plan.Beaten).Why, StringComparison.Ordinal);
        Assert.True(Ask(InkKind.Plastisol, [fair], PressWash.Solvent).Plan.Life!.MedianImpressions.Value < Ask(InkKind.Plastisol, fair).Plan.Life!.MedianImpressions.Value);
    }

    [Fact]
    public void A_lamp_outside_the_band_rules_it_out_unless_a_strip_shows_that_it_hardens()
    {
        var shop = new Shop
        {
            Emulsions = [Plover with { SensitiveFromNm = 300, SensitiveToNm = 380 }],
            Lamps = [new Lamp { Id = "violet", Kind = LampKind.LedArray, PeakNm = 405 }],
        };
        var beaten = Assert.Single(Planner.Plan(Job(InkKind.Plastisol, 500), shop).Colours[0].Beaten);
        Assert.Contains("lies outside what Plover answers to", beaten.Why, StringComparison.Ordinal);

        var tested = shop with { ExposureReadings = [new ExposureReading { EmulsionId = "Plover", LampId = "violet", Test = new StepTest(60, 7) }] };
        Assert.NotNull(Planner.Plan(Job(InkKind.Plastisol, 500), tested).Colours[0].Emulsion);
    }

    [Fact]
    public void What_is_known_and_not_reckoned_with_is_told()
    {
        var answer = Ask(InkKind.Plastisol, Plover with { ViscosityPaS = 5, CriticalDoseMjPerCm2 = 20, ResistsCleaner = new(ResistanceGrade.Good, Ground.Datasheet) });

        Assert.Equal(3, answer.NotReckoned.Count);
        Assert.Contains(answer.NotReckoned, sentence => sentence.StartsWith("The viscosity of Plover", StringComparison.Ordinal));
        Assert.Empty(Ask(InkKind.Plastisol, Plover).NotReckoned);
        Assert.Equal(3, EmulsionAnswerDocument.Of(answer)["notReckoned"]!.AsArray().Count);
    }

    [Theory]
    [InlineData(true, "eases lining the job up by eye")]
    [InlineData(false, "pins or marks")]
    public void A_coat_one_can_or_cannot_see_through_is_told(bool seeThrough, string told) =>
        Assert.Contains(Ask(InkKind.Plastisol, Plover with { SeeThrough = seeThrough }).Plan.Because, reason => reason.Contains(told, StringComparison.Ordinal));

    private static EmulsionAnswer Ask(InkKind ink, StencilEmulsion emulsion) => Ask(ink, [emulsion]);

    private static EmulsionAnswer Ask(InkKind ink, StencilEmulsion[] emulsions, PressWash? wash = null, long run = 2000)
    {
        var job = Job(ink, run);
        return Advisor.Answer(job, job.Colours[0], new Shop { Emulsions = emulsions, PressWash = wash });
    }

    private static Job Job(InkKind ink, long run) => new()
    {
        Name = "asked",
        Date = RandomShops.Today,
        Run = run,
        Colours = [new JobColour { Name = "one", Ink = ink, Kind = WorkKind.FullFrontSpot }],
    };
}
