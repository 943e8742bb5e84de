namespace Silkwright.Records.Screens;

/// <summary>Impressions made since the last such entry, not the total.</summary>
/// <param name="Impressions">1 or more.</param>
/// <param name="JobId">The job where it is not the assigned one.</param>
public sealed record ScreenPrinted(long Impressions, string? JobId = null) : ScreenFact(ScreenEventKind.Printed);
