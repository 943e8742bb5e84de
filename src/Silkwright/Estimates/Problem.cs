namespace Silkwright.Estimates;

/// <summary>A fault in what was given: what is wrong, where, and how to put it right.</summary>
/// <param name="What">What is wrong, in one sentence.</param>
/// <param name="Where">File, line, field or option.</param>
/// <param name="Remedy">What to do next.</param>
public sealed record Problem(string What, string Where, string Remedy);
