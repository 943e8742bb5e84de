using System.Text.RegularExpressions;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>What the columns of a gauge's file mean, by their headers.</summary>
internal sealed partial class GaugeColumns
{
    private static readonly Dictionary<string, string[]> Known = new()
    {
        ["coated"] = ["coated", "total", "thickness", "reading", "value", "stencil", "measurement"],
        ["bare"] = ["bare", "baremesh", "mesh um", "meshthickness", "fabric", "fabricthickness"],
        ["eom"] = ["eom", "overmesh", "emulsionovermesh"],
        ["kind"] = ["kind", "surface", "what"],
        ["unit"] = ["unit", "units"],
        ["screen"] = ["screen", "part", "frame", "foil", "sample"],
        ["place"] = ["place", "point", "position", "spot"],
        ["operator"] = ["operator", "person", "name", "by", "who", "appraiser"],
        ["trough"] = ["trough", "scoop", "coater"],
        ["emulsion"] = ["emulsion"],
        ["lot"] = ["lot", "batch"],
        ["count"] = ["meshcount", "meshcountpercm", "count", "mesh"],
        ["thread"] = ["thread", "threaddiameter"],
        ["strokes"] = ["strokes"],
        ["print passes"] = ["printpasses"],
        ["squeegee passes"] = ["squeegeepasses"],
        ["date"] = ["date", "on", "day", "measuredon", "time", "datetime", "timestamp"],
        ["repeat"] = ["repeat", "trial", "no", "number"],
    };

    /// <summary>Shorter headers are near to everything.</summary>
    private const int LeastNear = 5;

    private readonly Dictionary<string, int> at = [];
    private readonly List<(string First, string Other, string Meaning)> twice = [];

    /// <param name="header">As the file has it.</param>
    /// <param name="where">Its place, for faults: of a column by its number from 0.</param>
    /// <param name="problems">Takes the faults: a column there twice, two that hold the same thickness, one written wrong.</param>
    public GaugeColumns(IReadOnlyList<string> header, Func<int, string> where, ProblemList problems)
    {
        for (var i = 0; i < header.Count; i++)
        {
            var unit = UnitOf(header[i]);
            var bare = string.Concat(WithoutUnit(header[i]).Where(char.IsLetterOrDigit)).ToLowerInvariant();
            // "meshUm" is a thickness, "mesh" a count.
            var name = unit is not null && bare == "mesh" ? "bare" : Known.FirstOrDefault(known => known.Value.Contains(bare)).Key;
            if (name is null)
                RefuseSlip(header[i], bare, where(i), problems);
            else if (!at.TryAdd(name, i))
                RefuseTwice(header[at[name]], header[i], name, where(i), problems);
            else if (unit is not null)
                Units[name] = unit;
        }
    }

    /// <summary>Columns of one meaning: the first is read, the others are passed over.</summary>
    public IReadOnlyList<(string First, string Other, string Meaning)> Twice => twice;

    /// <summary>Units that headers tell, by column.</summary>
    public Dictionary<string, string> Units { get; } = [];

    public bool Has(string name) => at.ContainsKey(name);

    public int At(string name) => at[name];

    /// <summary>A field, trimmed; none where it is empty or the column is not there.</summary>
    public string? Of(SeparatedRow row, string name) =>
        at.TryGetValue(name, out var i) && i < row.Fields.Count && row.Fields[i].Trim() is { Length: > 0 } text ? text : null;

    public static IEnumerable<string> Taken => Known.Select(known => known.Key);

    private static void RefuseSlip(string header, string bare, string where, ProblemList problems)
    {
        if (bare.Length >= LeastNear && NearName.Of(bare, Known.SelectMany(known => known.Value).Where(alias => alias.Length >= LeastNear)) is { } near)
            problems.Add($"The column {NearName.Shown(header.Trim())} is not known and would be passed over.", where, $"Write {near} if that is meant, or give it a name that is not so near.");
    }

    private void RefuseTwice(string first, string other, string meaning, string where, ProblemList problems)
    {
        if (string.Equals(first.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase))
            problems.Add($"The column {NearName.Shown(other.Trim())} is there twice.", where, "Keep one of the two.");
        else if (GaugeRow.Thicknesses.Contains(meaning))
            problems.Add($"The columns {NearName.Shown(first.Trim())} and {NearName.Shown(other.Trim())} both hold the {meaning} thickness.", where, "Keep one of the two.");
        else
            twice.Add((first.Trim(), other.Trim(), meaning));
    }

    private static string? UnitOf(string header) => Unit().Match(header.Trim()) is { Success: true } match ? match.Groups["unit"].Value : null;

    private static string WithoutUnit(string header) => Unit().Replace(header.Trim(), "");

    [GeneratedRegex(@"[\s_(\[]*((?<=[\s_(\[])(?<unit>µm|μm|um|microns?|mils?|thou|mm)|(?<=[a-z])(?<unit>Um|Mil|Mm))[)\]]?$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Unit();
}
