using System.Text.Json;
using System.Text.RegularExpressions;
using Silkwright.Estimates;

namespace Silkwright.Records.Store;

/// <summary>The faults that any record may have: no name, no reason, not JSON, saved over somebody else's.</summary>
internal static partial class DocumentFaults
{
    /// <summary>Names and reasons longer than this are a paste gone wrong.</summary>
    public const int LongestText = 2000;

    public const int LongestKey = 64;

    private const int LongestIdempotencyKey = 200;

    public static void Key(ProblemList problems, string where, string key)
    {
        if (string.IsNullOrEmpty(key) || key.Length > LongestKey || !KeyShape().IsMatch(key))
            problems.Add($"\"{key}\" is not a key.", where, $"Use lower-case letters, digits and hyphens, at most {LongestKey}.");
    }

    /// <summary>Every database keeps such a text as it is: PostgreSQL takes no null character, and neither takes half of a surrogate pair.</summary>
    public static bool IsKeepable(string text) => !text.Contains('\0', StringComparison.Ordinal) && IsWellFormed(text);

    /// <exception cref="InputProblemException">No database can look the key up.</exception>
    public static void ThrowIfNoIdempotencyKey(string? key)
    {
        if (key is not null && (key.Length is 0 or > LongestIdempotencyKey || !IsKeepable(key)))
            throw new InputProblemException(new Problem("This is no idempotency key.", "idempotencyKey", $"Use 1 to {LongestIdempotencyKey} plain characters, new for each entry."));
    }

    public static void Person(ProblemList problems, string where, string? person)
    {
        if (string.IsNullOrWhiteSpace(person))
            problems.Add("Nobody is named.", where, "Give the name of the person who did it, as the shop calls them.");
        else if (person.Length > LongestText)
            problems.Add($"The name is longer than {LongestText} characters.", where, "Give the person's name alone.");
        else if (!IsKeepable(person) || person.Any(char.IsControl))
            problems.Add("The name holds characters that cannot be seen.", where, "Type the person's name again.");
    }

    public static void Why(ProblemList problems, string where, string? why)
    {
        if (string.IsNullOrWhiteSpace(why))
            problems.Add("No reason is given.", where, "Say in a few words what changed and why.");
        else if (why.Length > LongestText)
            problems.Add($"The reason is longer than {LongestText} characters.", where, "Shorten it.");
        else if (!IsKeepable(why))
            problems.Add("The reason holds characters that cannot be kept.", where, "Type it again.");
    }

    public static void JsonObject(ProblemList problems, string where, string text)
    {
        try
        {
            using var document = DocumentText.Parse(text);
            if (document.RootElement.ValueKind != JsonValueKind.Object)
                problems.Add("The document is not a JSON object.", where, "Start it with { and end it with }.");
        }
        catch (JsonException fault)
        {
            problems.Add(
                "The document is not JSON.", $"{where}, line {fault.LineNumber + 1}, column {fault.BytePositionInLine + 1}",
                "Mend the text there, then save again.");
        }
    }

    /// <exception cref="InputProblemException">Another revision has come since the writer read theirs.</exception>
    public static void ThrowIfChangedSince(int? basedOn, int? current, string where, string? savedBy)
    {
        if (basedOn is not null && basedOn != (current ?? 0))
        {
            throw new InputProblemException(new Problem(
                current is null ? "There is no such document yet." : $"{savedBy} has saved revision {current} in the meantime.",
                where,
                "Load it again, make the change there and save."));
        }
    }

    private static bool IsWellFormed(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsSurrogate(text[i]) && !(i + 1 < text.Length && char.IsSurrogatePair(text[i], text[++i])))
                return false;
        }

        return true;
    }

    [GeneratedRegex("^[a-z0-9][a-z0-9-]*\\z")]
    private static partial Regex KeyShape();
}
