namespace Silkwright.Plans;

/// <summary>What somebody says the artwork asks for, when there is no film to measure. Told is not measured: it counts as common practice.</summary>
public sealed record TypedNeeds(
    double? FinestLineUm = null,
    double? FinestGapUm = null,
    double? RulingLpi = null,
    double? CoveragePercent = null,
    double? AreaCm2 = null);
