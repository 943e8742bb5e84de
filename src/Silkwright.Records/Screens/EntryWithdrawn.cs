namespace Silkwright.Records.Screens;

/// <summary>Takes back the entry it corrects: what that said did not happen.</summary>
public sealed record EntryWithdrawn() : ScreenFact(ScreenEventKind.Withdrawn);
