namespace Silkwright.Choosing;

/// <summary>A choice in a comparison.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Cost">What it is expected to cost, with what that rests on.</param>
public sealed record Contender(string Id, ScreenCost Cost);
