using System.Text;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Shops by name, however it is spelled: blanks before, after and doubled, large and small letters and the two ways Unicode composes an accent make no other shop.</summary>
internal sealed class ShopNames
{
    /// <summary>Every name is held against every other only up to so many.</summary>
    private const int MostHeldAgainst = 100;

    /// <summary>Shorter words, and those with a digit, tell shops apart: A and B, 1 and 2.</summary>
    private const int LeastWordMistyped = 4;

    private readonly Dictionary<string, string> byKey = [];
    private readonly Dictionary<string, string> spellings = [];

    /// <summary>Names as they are compared.</summary>
    public static string Key(string name) => string.Join(' ', name.Normalize(NormalizationForm.FormC).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToUpperInvariant();

    /// <summary>The shop's name as it was first spelled.</summary>
    public string Of(string name)
    {
        if (spellings.TryGetValue(name, out var known))
            return known;
        var key = Key(name);
        if (!byKey.TryGetValue(key, out var first))
            byKey[key] = first = name;
        return spellings[name] = first;
    }

    /// <summary>The row under its shop's first spelling.</summary>
    public CoatRow Of(CoatRow row) => Of(row.Coat.Shop) is var shop && shop == row.Coat.Shop ? row : row with { Coat = row.Coat with { Shop = shop } };

    /// <summary>What was taken as one shop, and what may be one by another slip.</summary>
    public IEnumerable<Note> Notes()
    {
        foreach (var shop in spellings.GroupBy(spelling => spelling.Value).Where(spelled => spelled.Count() > 1).OrderBy(spelled => spelled.Key, StringComparer.Ordinal))
            yield return new Note($"'{shop.Key}' is also spelled {string.Join(", ", shop.Select(spelling => spelling.Key).Where(name => name != shop.Key).Order(StringComparer.Ordinal).Select(name => $"'{name}'"))} and was taken as one shop.");
        string[] names = [.. byKey.Values.Order(StringComparer.Ordinal)];
        if (names.Length > MostHeldAgainst)
            yield break;
        for (var i = 1; i < names.Length; i++)
        {
            if (names[..i].FirstOrDefault(other => AreNear(other, names[i])) is { } near)
                yield return new Note($"'{near}' and '{names[i]}' were taken as two shops; spell them alike if they are one.");
        }
    }

    private static bool AreNear(string one, string other) =>
        NearName.Of(other, [one]) is not null && TellingWords(one).SequenceEqual(TellingWords(other));

    private static IEnumerable<string> TellingWords(string name) => Key(name).Split(' ').Where(word => word.Length < LeastWordMistyped || word.Any(char.IsDigit));
}
