namespace Silkwright.Estimates;

/// <summary>One uncertain input and how much of the answer's width comes from it.</summary>
/// <param name="Name">The input, in plain words.</param>
/// <param name="EffectPercent">Its share of the answer's squared width. [%], 0 to 100; all inputs together make 100.</param>
public sealed record Driver(string Name, double EffectPercent);
