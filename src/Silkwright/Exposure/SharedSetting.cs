namespace Silkwright.Exposure;

/// <summary>Steps of a ladder that a machine cannot tell apart: they fall on one setting and are one strip.</summary>
/// <param name="Amount">The setting. [s or units]</param>
/// <param name="Steps">What they would have been given, rising; two or more. [s or units]</param>
public sealed record SharedSetting(double Amount, IReadOnlyList<double> Steps);
