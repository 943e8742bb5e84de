namespace Silkwright.Film.Measuring;

/// <summary>What the reader of a film cannot know from the file.</summary>
/// <param name="Dpi">Resolution that overrules the file's. [1/in]</param>
/// <param name="Polarity">Whether black prints (positive) or clear does.</param>
/// <param name="Page">Page of a PDF, from 1; every other file has one film.</param>
public sealed record FilmOptions(double? Dpi = null, FilmPolarity Polarity = FilmPolarity.Positive, int Page = 1);
