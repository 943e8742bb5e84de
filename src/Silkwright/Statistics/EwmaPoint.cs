namespace Silkwright.Statistics;

/// <summary>One value on a control chart.</summary>
/// <param name="Average">Exponentially weighted average up to it.</param>
/// <param name="Low">Lower limit there.</param>
/// <param name="High">Upper limit there.</param>
public sealed record EwmaPoint(double Average, double Low, double High)
{
    /// <summary>The average has left the limits.</summary>
    public bool IsOut => Average < Low || Average > High;
}
