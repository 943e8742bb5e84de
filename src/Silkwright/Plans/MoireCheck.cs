using Silkwright.Estimates;
using Silkwright.Moire;

namespace Silkwright.Plans;

/// <summary>Holds a colour's halftones against the mesh taken, and looks for a way out where their beat is seen.</summary>
internal static class MoireCheck
{
    /// <summary>Angle of a halftone whose angle nobody said: the usual one for a single colour. Common practice, no source. [degrees]</summary>
    private const double UsualAngleDegrees = 22.5;

    /// <summary>A way out must be this much less plain to be worth a new film. Our own judgement. [1]</summary>
    private const double WorthTelling = 0.05;

    private const double LinesPerInchPerCm = 2.54;

    /// <summary>The plan with what its halftone beats like; the same plan where it has none.</summary>
    public static ColourPlan On(ColourPlan plan)
    {
        if (Of(plan) is not { } verdict)
            return plan;
        var notes = verdict.AngleAssumed
            ? [.. plan.Notes, new Note($"{plan.Colour.Name}: the halftone's angle is not known; {UsualAngleDegrees}° is taken, for its beat with the mesh.", Ground.CommonPractice)]
            : plan.Notes;
        return plan with
        {
            Moire = verdict,
            Notes = notes,
            Cautions = verdict.IsSeen
                ? [new Caution("Before laying the film on this mesh", $"{verdict.Sentence} Look at film and stretched mesh together over a light table, and turn the film: the eye decides.", CautionLevel.Notice), .. plan.Cautions]
                : plan.Cautions,
        };
    }

    private static MoireVerdict? Of(ColourPlan plan)
    {
        var worst = Halftones(plan)
            .Select(halftone => MoireSearch.AsAsked(new MoireCase
            {
                Mesh = plan.Mesh.Fabric,
                RulingPerCm = halftone.Lpi / LinesPerInchPerCm,
                AngleDegrees = halftone.Degrees ?? UsualAngleDegrees,
            }))
            .MaxBy(choice => choice.VisibilityAtWorst);
        if (worst is null)
            return null;
        var verdict = new MoireVerdict { AsPlanned = worst, AngleAssumed = plan.Colour.Film is null && plan.Needs.AngleDegrees is null };
        if (!verdict.IsSeen)
            return verdict;
        var angle = Better(MoireSearch.BestAngles(worst.Asked), worst, choice => choice.AngleDegrees - worst.AngleDegrees);
        // A film made at another angle keeps its picture; another ruling is looked for only where no angle is enough.
        var ruling = angle?.VisibilityAtWorst < Visibility.JustSeen
            ? null
            : Better(MoireSearch.BestRulings(worst.Asked), worst, choice => choice.RulingPerCm - worst.RulingPerCm);
        return verdict with { Angle = angle, Ruling = ruling };
    }

    private static IEnumerable<(double Lpi, double? Degrees)> Halftones(ColourPlan plan) => plan.Colour.Film is { } film
        ? film.Halftones.Select(zone => (Math.Round(zone.RulingLpi, 1), (double?)Math.Round(zone.AngleDegrees, 1))).Distinct()
        : plan.Needs.RulingLpi is { } ruling ? [(ruling.Value, plan.Needs.AngleDegrees)] : [];

    /// <summary>The nearest that is no longer seen; else the quietest, where it is quieter by enough.</summary>
    private static MoireChoice? Better(IReadOnlyList<MoireChoice> choices, MoireChoice asPlanned, Func<MoireChoice, double> away)
    {
        var better = choices.Where(choice => choice.VisibilityAtWorst <= asPlanned.VisibilityAtWorst - WorthTelling).ToArray();
        return better.Where(choice => choice.VisibilityAtWorst < Visibility.JustSeen).MinBy(choice => Math.Abs(away(choice))) ?? better.FirstOrDefault();
    }
}
