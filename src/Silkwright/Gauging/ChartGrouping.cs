namespace Silkwright.Gauging;

/// <summary>What the readings of one control chart have in common.</summary>
public enum ChartGrouping
{
    /// <summary>Everything the shop coats.</summary>
    Shop,

    Operator,

    Trough,

    Emulsion,
}
