namespace Silkwright.Emulsion;

/// <summary>What a container holds and costs.</summary>
/// <param name="Grams">Content. [g]</param>
/// <param name="Cost">Price in the shop's currency, without tax.</param>
public sealed record ContainerPrice(double Grams, double Cost)
{
    /// <summary>What a kilogram costs in it. [cost/kg]</summary>
    public double CostPerKg => 1000 * Cost / Grams;
}
