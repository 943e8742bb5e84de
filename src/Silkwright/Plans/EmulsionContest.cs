using Silkwright.Choosing;
using Silkwright.Emulsion;

namespace Silkwright.Plans;

/// <summary>Holds every emulsion of a shop against one colour: hard limits first, then expected cost.</summary>
internal sealed record EmulsionContest
{
    /// <summary>Emulsions that may be used, cheapest first.</summary>
    public required IReadOnlyList<StencilCandidate> Allowed { get; init; }

    public required IReadOnlyList<(StencilEmulsion Emulsion, HardLimit Limit)> RuledOut { get; init; }

    public StencilCandidate? Winner => Allowed.Count == 0 ? null : Allowed[0];

    /// <summary>The coats and exposures of the emulsions that no limit forbids before they are tried.</summary>
    public required IReadOnlyDictionary<StencilEmulsion, ExposedCoat> Exposed { get; init; }

    /// <param name="brief">The colour.</param>
    /// <param name="known">Coats and exposures worked out before for the same mesh, thickness, lamps and readings.</param>
    public static EmulsionContest Of(ColourBrief brief, IReadOnlyDictionary<StencilEmulsion, ExposedCoat>? known = null)
    {
        var exposed = new Dictionary<StencilEmulsion, ExposedCoat>();
        var allowed = new List<StencilCandidate>();
        var ruledOut = new List<(StencilEmulsion Emulsion, HardLimit Limit)>();
        foreach (var emulsion in brief.Shop.Emulsions)
        {
            var shop = brief.Shop;
            if ((HardLimits.Against(emulsion, brief.Colour.Ink, brief.On, shop.Room.Light, shop.Room.Lux, shop.PressWash)
                ?? CandidateTrial.NoLamp(emulsion, brief)) is { } limit)
            {
                ruledOut.Add((emulsion, limit));
                continue;
            }

            exposed[emulsion] = known?.GetValueOrDefault(emulsion) ?? CandidateTrial.CoatAndExpose(emulsion, brief);
            var candidate = CandidateTrial.Of(exposed[emulsion], brief);
            if (HardLimits.NoWindow(candidate.Exposure) is { } noWindow)
                ruledOut.Add((emulsion, noWindow));
            else
                allowed.Add(candidate);
        }

        return new EmulsionContest
        {
            Allowed = [.. allowed.OrderBy(candidate => candidate.Cost.Total.Value).ThenBy(candidate => candidate.Emulsion.Id, StringComparer.Ordinal)],
            RuledOut = ruledOut,
            Exposed = exposed,
        };
    }

    /// <summary>Every emulsion but the winner, nearest first, the ruled-out last.</summary>
    public IReadOnlyList<Beaten> Beaten()
    {
        if (Winner is not { } winner)
            return [.. RuledOut.Select(Out)];
        return [.. Allowed.Skip(1).Select(loser => new Beaten(
                loser.Emulsion,
                LostBy.Sentence(loser.Cost, winner.Cost),
                RuledOut: false,
                CostModel.Difference(loser.Cost, winner.Cost),
                loser.Cost)),
            .. RuledOut.Select(Out)];

        static Beaten Out((StencilEmulsion Emulsion, HardLimit Limit) entry) => new(entry.Emulsion, entry.Limit.Why, RuledOut: true);
    }

    /// <summary>With nobody left: the change that would bring one back soonest.</summary>
    public string? NearestFix() => Winner is not null || RuledOut.Count == 0
        ? null
        : RuledOut.MinBy(entry => entry.Limit.FixEffort).Limit.Fix;
}
