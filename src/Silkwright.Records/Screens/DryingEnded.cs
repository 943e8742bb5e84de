namespace Silkwright.Records.Screens;

/// <summary>The screen is taken out dry.</summary>
public sealed record DryingEnded() : ScreenFact(ScreenEventKind.DryOut);
