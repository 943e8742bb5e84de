using Silkwright.Plans;

namespace Silkwright.Tests.Plans;

/// <summary>What following the plan costs in shops whose truth is known.</summary>
public class RegretTests
{
    private const int Shops = 5000;

    private static readonly (double Plan, double ButForLuck, double Any, double Least) Paid = Play();

    /// <summary>
    /// An oracle that knows each emulsion's luck in a shop cannot be matched: one who knows everything but that luck pays some 5 % more than the
    /// oracle. Beside that one the plan, which knows neither crew nor lamp nor lives, loses little.
    /// </summary>
    [Fact]
    public void The_plan_costs_at_most_three_percent_more_than_knowing_all_but_luck() =>
        Assert.InRange(100 * (Paid.Plan - Paid.ButForLuck) / Paid.Least, -1, 3);

    [Fact]
    public void The_plan_loses_less_than_half_of_what_taking_any_emulsion_loses() =>
        Assert.True(Paid.Plan - Paid.Least < 0.5 * (Paid.Any - Paid.Least), $"{100 * (Paid.Plan / Paid.Least - 1):0.0} % beyond the oracle, any: {100 * (Paid.Any / Paid.Least - 1):0.0} %");

    private static (double Plan, double ButForLuck, double Any, double Least) Play()
    {
        double plan = 0, butForLuck = 0, any = 0, least = 0;
        for (var seed = 0; seed < Shops; seed++)
        {
            var shop = new SimulatedShop(seed);
            var allowed = shop.Shop.Emulsions.Select(e => e.Id).Where(id => shop.TrueCost(id) is not null).ToArray();
            if (Planner.Plan(shop.Job, shop.Shop).Colours[0].Emulsion is not { } emulsion)
                continue;
            plan += shop.TrueCost(emulsion.Id)!.Value;
            butForLuck += shop.TrueCost(allowed.MinBy(id => shop.CostButForLuck(id))!)!.Value;
            any += allowed.Average(id => shop.TrueCost(id)!.Value);
            least += allowed.Min(id => shop.TrueCost(id)!.Value);
        }

        TestContext.Current.TestOutputHelper?.WriteLine(
            $"Beyond the oracle: plan {100 * (plan - least) / least:0.0} %, all but luck {100 * (butForLuck - least) / least:0.0} %, any {100 * (any - least) / least:0.0} %.");
        return (plan, butForLuck, any, least);
    }
}
