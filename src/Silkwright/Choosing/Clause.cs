namespace Silkwright.Choosing;

/// <summary>A sentence turned into the clause that follows a name and a colon.</summary>
internal static class Clause
{
    /// <summary>First letter small unless the word is an abbreviation, no full stop.</summary>
    public static string Of(string sentence)
    {
        var text = sentence.TrimEnd('.');
        var abbreviation = text.Length > 1 && char.IsUpper(text[1]);
        return text.Length == 0 || abbreviation ? text : char.ToLowerInvariant(text[0]) + text[1..];
    }
}
