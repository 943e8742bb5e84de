namespace Silkwright.Records.Screens;

/// <summary>Mesh washed free of grease, ready to coat.</summary>
public sealed record ScreenDegreased() : ScreenFact(ScreenEventKind.Degreased);
