using Silkwright.Choosing;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>Answers which emulsion to take for one colour, from whatever is known.</summary>
public static class Advisor
{
    /// <summary>The same question has the same answer: the draws behind its chances start here.</summary>
    private const int Seed = 20_011;

    /// <summary>Answers for one colour of a job in a shop, each known as far as it is known.</summary>
    /// <param name="job">The job.</param>
    /// <param name="colour">Which of its colours.</param>
    /// <param name="shop">The shop; everything may be missing.</param>
    /// <exception cref="InputProblemException">The job or the shop cannot be planned as given.</exception>
    public static EmulsionAnswer Answer(Job job, JobColour colour, Shop shop)
    {
        PlanInput.Check(job, shop);
        var (filled, assumed) = ShopAssumptions.Fill(shop);
        var (plan, contest, brief) = ColourPlanner.Plan(colour, job, filled);
        Contender[] contenders = [.. contest.Allowed.Select(candidate => new Contender(candidate.Emulsion.Id, candidate.Cost))];
        var comparison = contenders.Length == 0 ? null : Comparing.Of(contenders, Seed);
        var curves = Curves(job, brief, contest);
        return new EmulsionAnswer
        {
            Job = job,
            Plan = plan,
            Currency = shop.Prices.Currency,
            Comparison = comparison,
            Contenders = contenders,
            Curves = curves,
            Handling = [.. contest.Allowed.Select(candidate => Handle(candidate, filled.Room))],
            Facts = Told.Of(job, colour, shop),
            Assumed = [.. assumed, .. Planner.JobNotes(job, shop), .. plan.Needs.Notes],
            NotReckoned = NotReckonedWith.For(contest, filled),
            StopIf = Conditions.For(brief, contest, curves),
            MeasureFirst = FirstMeasurements.For(contest, brief, comparison),
        };
    }

    /// <summary>With no emulsion to begin with, there is nothing to turn.</summary>
    private static CostCurve[] Curves(Job job, ColourBrief brief, EmulsionContest contest) => contest.Winner is null ? [] :
    [
        CostCurves.Of(TurningAxis.Run, brief, contest, job.Run),
        CostCurves.Of(TurningAxis.ScreensPerDay, brief, contest, brief.Shop.ScreensPerDay ?? WorkTimes.ScreensPerDay.Value),
        CostCurves.Of(TurningAxis.HumidityPercent, brief, contest, brief.Shop.Room.HumidityPercent!.Value),
        CostCurves.Of(TurningAxis.EomUm, brief, contest, CandidateTrial.WantedEomUm(brief)),
    ];

    private static Handling Handle(StencilCandidate candidate, Room room) => new(
        candidate.Emulsion.Id,
        room.Light is { } known ? LightSafety.Minutes(known, candidate.Emulsion, room.Lux) : null,
        Forgiveness.Of(candidate.Exposure),
        candidate.Finish)
    {
        LaidWith = candidate.Emulsion.LaidWith?.Id,
        Finishes = candidate.Finishes,
        SeeThrough = candidate.Emulsion.SeeThrough,
    };
}
