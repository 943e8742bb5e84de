namespace Silkwright.Choosing;

/// <summary>Why an emulsion may not be used at all, and what would change that.</summary>
/// <param name="Why">In one sentence.</param>
/// <param name="Fix">The nearest way out.</param>
/// <param name="FixEffort">How far away that is: a smaller number is nearer. Orders the fixes, nothing else.</param>
public sealed record HardLimit(string Why, string Fix, int FixEffort);
