using Silkwright.Choosing;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>Why this mesh and this emulsion, in sentences.</summary>
internal static class Reasons
{
    /// <summary>A choice is too close to call when the other is the cheaper over more than this share of their difference's interval. [1]</summary>
    private const double CloseShare = 0.25;

    public static IReadOnlyList<string> For(ColourBrief brief, IReadOnlyList<MeshCandidate> meshes, DetailVerdict detail, EmulsionContest contest)
    {
        var reasons = new List<string>();
        var passedOver = meshes.FirstOrDefault(mesh => mesh != brief.Mesh);
        if (brief.Mesh.Holds && passedOver is not null)
            reasons.Add(passedOver.Holds ? $"{passedOver.Mesh.Fabric.Name} would hold it too and lays {Figures.Plain(passedOver.Mesh.InkVolumeCm3PerM2.Value, 0)} cm³/m²." : $"The next, not taken: {passedOver.Reason}");
        if (detail.Coarser is { } coarser)
            reasons.Add(coarser.Sentence);
        if (contest.Winner is not { } winner)
        {
            reasons.Add($"None of the {contest.RuledOut.Count} emulsions may be used; nearest way out: {contest.NearestFix()}.");
            return reasons;
        }

        reasons.Add($"{Clause.Beginning(winner.Emulsion.Id)}: {Clause.Of(winner.Resistance.Reason)}.");
        if (winner.LampBecause is { } lamp)
            reasons.Add(lamp);
        reasons.Add($"{Clause.Beginning(Figures.Chance(winner.Life.FinishPercent))} of 100 such stencils finish {Figures.Whole(brief.Impressions)} impressions{Figures.InBrackets(Figures.ChanceInterval(winner.Life.FinishPercent))}.");
        if (winner.Lot.DaysLeft is { } left)
            reasons.Add($"The lot keeps about {Figures.Value(left)} more days{Figures.InBrackets(Figures.Interval(left))}.");
        reasons.Add(contest.Allowed.Count > 1
            ? Cheapest(winner, contest.Allowed[1])
            : "The only emulsion on the shelf that may be used for this ink today.");
        if (winner.Emulsion.SeeThrough is { } seeThrough)
        {
            reasons.Add(seeThrough
                ? "Its coat is see-through, which eases lining the job up by eye."
                : "Its coat is not see-through: line the job up by pins or marks, not by eye.");
        }

        if (WashResistance.To(brief.Shop.PressWash, winner.Emulsion) is { } wash)
            reasons.Add(wash.Reason);
        if (winner.Emulsion.Hardening == Hardening.Needed && winner.Finish == StencilFinish.Hardened)
            reasons.Add("It stands this ink only when hardened, and its mesh is then lost.");
        return reasons;

        static string ByEye(StencilCandidate first, StencilCandidate second) =>
            second.Emulsion.SeeThrough == true && first.Emulsion.SeeThrough != true
                ? ", and its see-through coat speaks for it where jobs are lined up by eye" : "";

        string Cheapest(StencilCandidate first, StencilCandidate second)
        {
            var difference = CostModel.Difference(second.Cost, first.Cost);
            var call = -difference.Low > CloseShare * (difference.High - difference.Low) ? $": too close to call{ByEye(first, second)}" : "";
            return $"Least expected cost of the {contest.Allowed.Count} that may be used, {Figures.Value(first.Cost.Total)} {brief.Shop.Prices.Currency}; {second.Emulsion.Id} costs {Figures.More(difference)}{Figures.InBrackets(Figures.Interval(difference))}{call}.";
        }
    }
}
