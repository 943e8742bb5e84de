namespace Silkwright.Answers;

/// <summary>What each emulsion is expected to cost along one circumstance, all else as asked.</summary>
/// <param name="Axis">The circumstance.</param>
/// <param name="Asked">Its value in the question.</param>
/// <param name="Values">Rising values of the circumstance.</param>
/// <param name="Costs">Expected cost at each of them by emulsion; none where the emulsion may not be used. [currency]</param>
/// <param name="Turns">Where another emulsion takes over, rising.</param>
public sealed record CostCurve(
    TurningAxis Axis,
    double Asked,
    IReadOnlyList<double> Values,
    IReadOnlyDictionary<string, IReadOnlyList<double?>> Costs,
    IReadOnlyList<TurningPoint> Turns);
