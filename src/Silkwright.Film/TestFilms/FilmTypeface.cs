using SkiaSharp;

namespace Silkwright.Film.TestFilms;

/// <summary>The typeface that ships with the program (SIL Open Font License 1.1); the machine's own fonts are never used.</summary>
internal static class FilmTypeface
{
    private static readonly SKTypeface Regular = Load("plex-sans-condensed-regular.woff");
    private static readonly SKTypeface Heavy = Load("plex-sans-condensed-bold.woff");

    public static SKTypeface Of(bool bold) => bold ? Heavy : Regular;

    private static SKTypeface Load(string name)
    {
        using var stream = typeof(FilmTypeface).Assembly.GetManifestResourceStream($"{typeof(FilmTypeface).Namespace}.Fonts.{name}");
        return SKTypeface.FromStream(stream) ?? throw new InvalidOperationException($"The program's typeface {name} cannot be loaded.");
    }
}
