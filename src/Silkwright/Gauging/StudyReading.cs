namespace Silkwright.Gauging;

/// <summary>One reading of a gauge study.</summary>
/// <param name="Part">The screen or foil, or the place on it, that was read again and again.</param>
/// <param name="Operator">Who read it.</param>
/// <param name="ValueUm">What the gauge showed, or what was reckoned from it. [µm]</param>
/// <param name="Line">Where it stands in its file, from 1; 0 where it stands in none.</param>
public sealed record StudyReading(string Part, string Operator, double ValueUm, int Line = 0);
