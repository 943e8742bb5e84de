namespace Silkwright.Records.Screens;

/// <summary>A screen, every entry as written, and the story they tell.</summary>
/// <param name="Screen">What the record was begun with.</param>
/// <param name="Events">Every entry, corrected ones and corrections included, in the order of writing.</param>
/// <param name="Story">What holds.</param>
public sealed record ScreenRecord(Screen Screen, IReadOnlyList<ScreenEvent> Events, ScreenStory Story);
