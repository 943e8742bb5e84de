namespace Silkwright.Contracts;

/// <summary>The known name that somebody most likely meant.</summary>
public static class NearName
{
    private const int LongestShown = 40;
    private const int LongestMeant = 80;

    /// <summary>The nearest of the known names; none where all are too far off to have been meant.</summary>
    /// <remarks>A slip is a letter too many, missing, wrong or swapped with its neighbour: one in four letters at most, and one in any name of three letters or more.</remarks>
    public static string? Of(string written, IEnumerable<string> known)
    {
        if (written.Length > LongestMeant)
            return null;
        var plain = Plain(written);
        var nearest = known.Select(name => (Name: name, Slips: Slips(plain, Plain(name)))).OrderBy(name => name.Slips).ThenBy(name => name.Name, StringComparer.Ordinal).FirstOrDefault();
        return nearest.Name is not null && nearest.Slips <= Math.Max(plain.Length > 2 ? 1 : 0, plain.Length / 4) ? nearest.Name : null;
    }

    /// <summary>What to do about a name that is not known.</summary>
    public static string Remedy(string written, IReadOnlyList<string> known) =>
        Of(written, known) is { } near ? $"Write {near} if that is meant, or take it out." : $"Take it out. The names are {string.Join(", ", known)}.";

    public static string Shown(string written) => written.Length > LongestShown ? $"{written[..LongestShown]}…" : written;

    private static string Plain(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToUpperInvariant();

    /// <summary>Damerau's distance with neighbours swapped once (optimal string alignment).</summary>
    private static int Slips(string one, string other)
    {
        int[] before = [], last = [.. Enumerable.Range(0, other.Length + 1)];
        for (var i = 1; i <= one.Length; i++)
        {
            var row = new int[other.Length + 1];
            row[0] = i;
            for (var j = 1; j <= other.Length; j++)
            {
                row[j] = Math.Min(Math.Min(last[j], row[j - 1]) + 1, last[j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
            }

            (before, last) = (last, row);
        }

        return last[^1];
    }
}
