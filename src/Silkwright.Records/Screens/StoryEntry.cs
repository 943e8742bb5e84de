namespace Silkwright.Records.Screens;

/// <summary>What holds in one place of the story once corrections are read.</summary>
/// <param name="Place">The sequence of the entry first written there.</param>
/// <param name="Entry">The entry that holds: the first one, or its latest correction.</param>
public sealed record StoryEntry(int Place, ScreenEvent Entry);
