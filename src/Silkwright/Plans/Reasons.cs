using System.Globalization;
using Silkwright.Choosing;

namespace Silkwright.Plans;

/// <summary>Why this mesh and this emulsion, in sentences.</summary>
internal static class Reasons
{
    public static IReadOnlyList<string> For(ColourBrief brief, IReadOnlyList<MeshCandidate> meshes, EmulsionContest contest)
    {
        var reasons = new List<string> { brief.Mesh.Reason };
        var passedOver = meshes.FirstOrDefault(mesh => mesh != brief.Mesh);
        if (brief.Mesh.Holds && passedOver is not null)
            reasons.Add(passedOver.Holds ? $"{passedOver.Mesh.Fabric.Name} would hold it too and lays {passedOver.Mesh.InkVolumeCm3PerM2.Value.ToString("0", CultureInfo.InvariantCulture)} cm³/m²." : $"The next, not taken: {passedOver.Reason}");
        if (contest.Winner is not { } winner)
        {
            reasons.Add($"None of the {contest.RuledOut.Count} emulsions may be used; nearest way out: {contest.NearestFix()}.");
            return reasons;
        }

        reasons.Add($"{winner.Emulsion.Id}: {Clause.Of(winner.Resistance.Reason)}.");
        reasons.Add(string.Create(CultureInfo.InvariantCulture, $"{winner.Life.FinishPercent.Value:0} of 100 such stencils finish {brief.Impressions:#,0} impressions ({winner.Life.FinishPercent.Low:0} to {winner.Life.FinishPercent.High:0})."));
        if (winner.Lot.DaysLeft is { } left)
            reasons.Add(string.Create(CultureInfo.InvariantCulture, $"The lot keeps about {left.Value:0} more days ({left.Low:0} to {left.High:0})."));
        reasons.Add(contest.Allowed.Count > 1
            ? string.Create(CultureInfo.InvariantCulture, $"Least expected cost of the {contest.Allowed.Count} that may be used: {winner.Cost.Total.Value:0.00} against {contest.Allowed[1].Cost.Total.Value:0.00} for {contest.Allowed[1].Emulsion.Id}.")
            : "The only emulsion on the shelf that may be used for this ink today.");
        if (winner.Emulsion.SeeThrough == true)
            reasons.Add("Its coat is see-through, which eases lining the job up by eye.");
        return reasons;
    }
}
