namespace Silkwright.Records.Screens;

/// <summary>The screen goes to dry.</summary>
/// <param name="Place">Cabinet or rack.</param>
public sealed record DryingBegun(string? Place = null) : ScreenFact(ScreenEventKind.DryIn);
