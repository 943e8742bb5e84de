namespace Silkwright.Contracts;

/// <summary>Members of enumerations as files and options write them: <c>waterBased</c>, <c>dualCure</c>.</summary>
public static class Word
{
    /// <summary>The member in camel case.</summary>
    public static string Of<T>(T member)
        where T : struct, Enum
    {
        var name = member.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    /// <summary>All members in camel case, in the order they are declared.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(Of)];

    /// <summary>The member that a word means; case, hyphens and spaces do not matter.</summary>
    public static bool TryRead<T>(string word, out T member)
        where T : struct, Enum
    {
        var plain = Bare(word);
        foreach (var candidate in Enum.GetValues<T>())
        {
            if (string.Equals(Bare(candidate.ToString()), plain, StringComparison.OrdinalIgnoreCase))
            {
                member = candidate;
                return true;
            }
        }

        member = default;
        return false;
    }

    private static string Bare(string word) => new([.. word.Where(char.IsLetterOrDigit)]);
}
