namespace Silkwright.Scheduling.Shelf;

/// <summary>A size that an emulsion is sold in.</summary>
/// <param name="Grams">Content. [g], above 0.</param>
/// <param name="Price">What one costs. [money], 0 or more.</param>
public sealed record ShelfContainer(double Grams, double Price)
{
    /// <summary>What keeping this size costs beside what keeping the emulsion does: what is thrown away, place. [money/month], 0 or more.</summary>
    public double FixedCostPerMonth { get; init; }

    /// <summary>[money/g]</summary>
    public double PricePerGram => Price / Grams;
}
