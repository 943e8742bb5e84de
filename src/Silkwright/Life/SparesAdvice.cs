namespace Silkwright.Life;

/// <summary>How many spare screens pay.</summary>
/// <param name="Spares">Spares with the least expected cost.</param>
/// <param name="ExpectedCost">Expected cost of spares, remakes and stops at that number.</param>
/// <param name="CostBySpares">Expected cost with 0, 1, 2, ... spares.</param>
public sealed record SparesAdvice(int Spares, double ExpectedCost, IReadOnlyList<double> CostBySpares);
