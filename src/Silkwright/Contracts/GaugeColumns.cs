using System.Text.RegularExpressions;

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

    private readonly Dictionary<string, int> at = [];

    public GaugeColumns(IReadOnlyList<string> header)
    {
        for (var i = 0; i < header.Count; i++)
        {
            var unit = UnitOf(header[i]);
            var bare = string.Concat(WithoutUnit(header[i]).Where(char.IsLetterOrDigit)).ToLowerInvariant();
            // "meshUm" is a thickness, "mesh" a count.
            var name = unit is not null && bare == "mesh" ? "bare" : Known.FirstOrDefault(known => known.Value.Contains(bare)).Key;
            if (name is not null && at.TryAdd(name, i) && unit is not null)
                Units[name] = unit;
        }
    }

    /// <summary>Units that headers tell, by column.</summary>
    public Dictionary<string, string> Units { get; } = [];

    public bool Has(string name) => at.ContainsKey(name);

    public int At(string name) => at[name];

    /// <summary>A field, trimmed; none where it is empty or the column is not there.</summary>
    public string? Of(SeparatedRow row, string name) =>
        at.TryGetValue(name, out var i) && i < row.Fields.Count && row.Fields[i].Trim() is { Length: > 0 } text ? text : null;

    public static IEnumerable<string> Taken => Known.Select(known => known.Key);

    private static string? UnitOf(string header) => Unit().Match(header.Trim()) is { Success: true } match ? match.Groups["unit"].Value : null;

    private static string WithoutUnit(string header) => Unit().Replace(header.Trim(), "");

    [GeneratedRegex(@"[\s_(\[]*((?<=[\s_(\[])(?<unit>µm|μm|um|microns?|mils?|thou|mm)|(?<=[a-z])(?<unit>Um|Mil|Mm))[)\]]?$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Unit();
}
