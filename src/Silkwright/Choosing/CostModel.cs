using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>Expected cost of one colour's screens over the run.</summary>
/// <remarks>docs/engines/choosing.md, equations 1 to 4. Sums of expectations; no discounting, no fixed cost of keeping an emulsion.</remarks>
public static class CostModel
{
    public static ScreenCost Of(CostCase cost)
    {
        Uncertain[] inputs = [.. CostInputs.All.Select(input => Expected(cost, input))];
        var parts = Propagation.ThroughAll(amounts => new CostPoint(cost.Screens, amounts).Parts(), inputs, floor: 0);
        var total = parts[^1];
        return new ScreenCost
        {
            Case = cost,
            Total = total.Estimate,
            Drivers = total.Drivers,
            EmulsionOnScreen = parts[0].Estimate,
            Coating = parts[1].Estimate,
            Drying = parts[2].Estimate,
            Exposing = parts[3].Estimate,
            Making = parts[4].Estimate,
            Finish = parts[5].Estimate,
            Reclaim = parts[6].Estimate,
            Labour = parts[7].Estimate,
            Waste = parts[8].Estimate,
            Remakes = parts[9].Estimate,
            RemadeUnprinted = parts[10].Estimate,
        };
    }

    /// <summary>What it costs where every input falls out in one way. [currency]</summary>
    /// <param name="cost">The case.</param>
    /// <param name="share">Share of an input's draws below the one meant. [1], 0 to 1</param>
    public static double TotalAt(CostCase cost, Func<CostInput, double> share) =>
        new CostPoint(cost.Screens, [.. CostInputs.All.Select(input => TriangularLaw.At(CostInputs.Of(cost, input), share(input)))]).Total;

    /// <summary>How much dearer one choice is than another; what a shop has one of (its labour rate) falls out alike on both sides.</summary>
    public static Estimate Difference(ScreenCost dearer, ScreenCost cheaper)
    {
        if (ReferenceEquals(dearer, cheaper))
            return Estimate.Exact(0, Ground.Model);
        var (one, other) = (dearer.Case, cheaper.Case);
        var shared = CostInputs.All.Where(CostInputs.IsShared).ToArray();
        var own = CostInputs.All.Where(input => !CostInputs.IsShared(input)).ToArray();
        Uncertain[] inputs = [.. shared.Select(Luck), .. own.Select(Of(one)), .. own.Select(Of(other))];
        return Propagation.Through(
            amounts => new CostPoint(one.Screens, Amounts(one, amounts, shared.Length)).Total
                - new CostPoint(other.Screens, Amounts(other, amounts, shared.Length + own.Length)).Total,
            inputs).Estimate;

        static Func<CostInput, Uncertain> Of(CostCase cost) => input => Expected(cost, input);

        // A slow coat takes its place longer: the two sides share how dear a place turns out, not what it comes to.
        Uncertain Luck(CostInput input)
        {
            var estimate = Expected(one, input).Estimate;
            return new Uncertain(CostInputs.Words(input), new Estimate(0, -1, 1, estimate.Ground, estimate.CoverPercent));
        }

        double[] Amounts(CostCase cost, IReadOnlyList<double> all, int ownFrom)
        {
            var amounts = new double[CostInputs.All.Count];
            for (var i = 0; i < shared.Length; i++)
            {
                var estimate = Expected(cost, shared[i]).Estimate;
                amounts[(int)shared[i]] = estimate.Value + (all[i] * (all[i] < 0 ? estimate.Value - estimate.Low : estimate.High - estimate.Value));
            }

            for (var i = 0; i < own.Length; i++)
                amounts[(int)own[i]] = all[ownFrom + i];
            return amounts;
        }
    }

    /// <summary>An input at its mean, so that sums of expectations come out right where an interval is lopsided.</summary>
    private static Uncertain Expected(CostCase cost, CostInput input)
    {
        var estimate = CostInputs.Of(cost, input);
        return new Uncertain(
            CostInputs.Words(input),
            new Estimate(TriangularLaw.Mean(estimate), estimate.Low, estimate.High, estimate.Ground, estimate.CoverPercent));
    }
}
