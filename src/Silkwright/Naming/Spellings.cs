using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace Silkwright.Naming;

/// <summary>
/// Names of one kind, each one however it is spelled: blanks before, after and doubled, large and small letters and the two ways Unicode composes an accent (UAX #15) make no other name.
/// </summary>
public sealed class Spellings
{
    private readonly Dictionary<(string Within, string Key), string> byKey = [];
    private readonly Dictionary<(string Within, string Spelling), string> spellings = [];

    /// <summary>Names as they are compared.</summary>
    public static string Key(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return string.Join(' ', name.Normalize(NormalizationForm.FormC).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToUpperInvariant();
    }

    /// <summary>Whether two spellings are of one name; none is nobody's.</summary>
    public static bool AreOne(string? one, string? other) => one is not null && other is not null && (one == other || Key(one) == Key(other));

    /// <summary>The name as it was first spelled.</summary>
    /// <param name="name">A spelling of it; none: none.</param>
    /// <param name="within">What it is a name in, such as a shop: one name in two shops is two.</param>
    [return: NotNullIfNotNull(nameof(name))]
    public string? Of(string? name, string within = "")
    {
        if (name is null || spellings.TryGetValue((within, name), out var known))
            return name is null ? null : spellings[(within, name)];
        var key = (within, Key(name));
        if (!byKey.TryGetValue(key, out var first))
            byKey[key] = first = name;
        return spellings[(within, name)] = first;
    }

    /// <summary>The names, as first spelled.</summary>
    public IEnumerable<(string Within, string Name)> Names => byKey.Select(name => (name.Key.Within, name.Value));

    /// <summary>Names that were spelled otherwise too, with those spellings.</summary>
    public IEnumerable<(string Within, string Name, IReadOnlyList<string> Also)> SpelledOtherwise =>
        from spelling in spellings
        where spelling.Key.Spelling != spelling.Value
        group spelling.Key.Spelling by (spelling.Key.Within, Name: spelling.Value) into name
        orderby name.Key.Within, name.Key.Name
        select (name.Key.Within, name.Key.Name, (IReadOnlyList<string>)[.. name.Order(StringComparer.Ordinal)]);
}
