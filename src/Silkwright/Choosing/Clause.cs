namespace Silkwright.Choosing;

/// <summary>A sentence turned into the clause that follows a name and a colon.</summary>
internal static class Clause
{
    /// <summary>A name as a sentence begins with it.</summary>
    public static string Beginning(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];

    /// <summary>A name after "the" or before a noun: one that brings its own article loses it, "a dual-cure" is a dual-cure.</summary>
    public static string WithoutArticle(string name)
    {
        var article = Array.Find(Articles, article => name.StartsWith(article, StringComparison.Ordinal));
        return article is null ? name : name[article.Length..];
    }

    private static readonly string[] Articles = ["a ", "an ", "the "];

    /// <summary>First letter small unless the word is an abbreviation, no full stop.</summary>
    public static string Of(string sentence)
    {
        var text = sentence.TrimEnd('.');
        var abbreviation = text.Length > 1 && char.IsUpper(text[1]);
        return text.Length == 0 || abbreviation ? text : char.ToLowerInvariant(text[0]) + text[1..];
    }
}
