namespace Silkwright.Plans;

/// <summary>What work and waiting cost a shop; common practice stands in where it has not said.</summary>
public sealed record ShopPrices
{
    public string Currency { get; init; } = "EUR";

    /// <summary>An hour in the screen room. [cost/h]</summary>
    public double? LabourPerHour { get; init; }

    /// <summary>A minute of stopped press and its crew. [cost/min]</summary>
    public double? PressStopPerMinute { get; init; }

    /// <summary>Ink. [cost/kg]</summary>
    public double? InkPerKg { get; init; }
}
