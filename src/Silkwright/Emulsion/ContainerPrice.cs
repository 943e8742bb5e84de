namespace Silkwright.Emulsion;

/// <summary>What a container holds and costs.</summary>
/// <param name="Grams">Content. [g]</param>
/// <param name="Cost">Price in the shop's currency, without tax.</param>
public sealed record ContainerPrice(double Grams, double Cost)
{
    /// <summary>A container whose size is not given. Common practice: 0.9 to 1 kg is the smallest usual one. [g]</summary>
    public const double UsualGrams = 1000;

    /// <summary>What a kilogram costs in it. [cost/kg]</summary>
    public double CostPerKg => 1000 * Cost / Grams;
}
