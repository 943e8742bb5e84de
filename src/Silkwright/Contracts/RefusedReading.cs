using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>A row of a gauge's file that was not taken, given back as it was written.</summary>
/// <param name="Line">From 1.</param>
/// <param name="Fields">As written.</param>
/// <param name="Problems">What is wrong, where, and what to do.</param>
public sealed record RefusedReading(int Line, IReadOnlyList<string> Fields, IReadOnlyList<Problem> Problems);
