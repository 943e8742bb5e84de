using Silkwright.Contracts;

namespace Silkwright.Cli.Printing;

/// <summary>Words from outside, such as names of files, made safe to print.</summary>
internal static class PlainText
{
    /// <summary>What is longer says no more. [characters]</summary>
    private const int Longest = 1200;

    /// <summary>
    /// The text without what a terminal would obey, control characters and those that turn the reading direction; cut where it
    /// does not end.
    /// </summary>
    public static string Of(string text)
    {
        var cut = text.Length <= Longest ? text : string.Concat(text.AsSpan(0, Longest / 2), " ... ", text.AsSpan(text.Length - (Longest / 2)));
        return string.Concat(cut.Select(c => UnseenCharacters.Are(c) ? '\uFFFD' : c));
    }
}
