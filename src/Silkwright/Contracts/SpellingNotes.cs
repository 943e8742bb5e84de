using Silkwright.Estimates;
using Silkwright.Naming;

namespace Silkwright.Contracts;

/// <summary>What was assumed of names: which spellings were taken as one, and which names may be one by another slip.</summary>
internal static class SpellingNotes
{
    /// <summary>Every name is held against every other only up to so many in one place, and in all.</summary>
    private const int MostHeldAgainst = 100;
    private const int MostInAll = 1000;

    /// <summary>Shorter words, and those with a digit, tell names apart: A and B, 1 and 2.</summary>
    private const int LeastWordMistyped = 4;

    /// <param name="names">The names.</param>
    /// <param name="one">What one of them is called: shop.</param>
    /// <param name="many">And several: shops.</param>
    public static IEnumerable<Note> Of(Spellings names, string one, string many)
    {
        foreach (var (within, name, also) in names.SpelledOtherwise)
            yield return new Note($"'{name}'{Of(within)} is also spelled {string.Join(", ", also.Select(spelling => $"'{spelling}'"))} and was taken as one {one}.");
        (string Within, string Name)[] known = [.. names.Names];
        if (known.Length > MostInAll)
            yield break;
        foreach (var place in known.GroupBy(name => name.Within, name => name.Name).OrderBy(place => place.Key, StringComparer.Ordinal).Where(place => place.Count() <= MostHeldAgainst))
        {
            string[] here = [.. place.Order(StringComparer.Ordinal)];
            for (var i = 1; i < here.Length; i++)
            {
                if (here[..i].FirstOrDefault(other => AreNear(other, here[i])) is { } near)
                    yield return new Note($"'{near}' and '{here[i]}'{Of(place.Key)} were taken as two {many}; spell them alike if they are one.");
            }
        }
    }

    private static string Of(string within) => within.Length == 0 ? "" : $" of {within}";

    private static bool AreNear(string one, string other) =>
        NearName.Of(other, [one]) is not null && TellingWords(one).SequenceEqual(TellingWords(other));

    private static IEnumerable<string> TellingWords(string name) => Spellings.Key(name).Split(' ').Where(word => word.Length < LeastWordMistyped || word.Any(char.IsDigit));
}
