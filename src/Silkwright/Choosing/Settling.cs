namespace Silkwright.Choosing;

/// <summary>The one amount that would settle a close choice if it were known.</summary>
/// <param name="Input">Which amount.</param>
/// <param name="Of">Whose it is; none where the choices share it.</param>
/// <param name="RegretNow">What choosing by expected cost loses to not knowing, on average. [currency a job]</param>
/// <param name="RegretKnown">The same once the amount is known. [currency a job]</param>
public sealed record Settling(CostInput Input, string? Of, double RegretNow, double RegretKnown);
