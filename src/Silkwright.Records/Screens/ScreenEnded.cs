namespace Silkwright.Records.Screens;

/// <summary>The stencil is gone, or put away.</summary>
/// <param name="Reason">What ended it.</param>
/// <param name="How">How it broke: required for a breakdown.</param>
public sealed record ScreenEnded(EndReason Reason, string? How = null) : ScreenFact(ScreenEventKind.Ended);
