using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Reads tables of coats: readings with <c>eomUm</c>, cases without. docs/engines/coating.md, "The tables".</summary>
public static class CoatTable
{
    /// <summary>Columns every table of coats has.</summary>
    public static readonly IReadOnlyList<string> Columns =
        ["shop", "operator", "trough", "emulsion", "solidsPercent", "meshCountPerCm", "threadUm", "printPasses", "squeegeePasses"];

    /// <summary>Columns it may have.</summary>
    public static readonly IReadOnlyList<string> Optional =
        ["strokes", "edgeRadiusMm", "screen", "point", "repeat", "meshUm", "totalUm", "measuredOn", "emulsionDensity"];

    /// <summary>More than all the shops of an advisor read in years.</summary>
    public const int MostRows = 1_000_000;

    /// <summary>Readings of any shops.</summary>
    /// <param name="text">The table, with its header.</param>
    /// <param name="where">The file's name, for faults.</param>
    /// <exception cref="InputProblemException">Every fault of the table, with line and column.</exception>
    public static IReadOnlyList<CoatRow> Readings(string text, string where) => Read(text, where, isReading: true);

    /// <summary>Coats asked about.</summary>
    /// <inheritdoc cref="Readings(string, string)"/>
    public static IReadOnlyList<CoatRow> Cases(string text, string where) => Read(text, where, isReading: false);

    private static CoatRow[] Read(string text, string where, bool isReading)
    {
        var problems = new ProblemList();
        var rows = SeparatedText.Read(text, where, problems);
        SeparatedText.RefuseLongRows(rows, where, problems);
        string[] columns = isReading ? [.. Columns, "eomUm"] : [.. Columns];
        if (rows.Count == 0)
            problems.Add("There is nothing in it.", where, $"Begin with the header {string.Join(',', columns)}.");
        else if (rows.Count - 1 > MostRows)
            problems.Add($"It has {rows.Count - 1} rows.", where, $"Give {MostRows} at most: the latest.");
        problems.ThrowIfAny();
        var header = SeparatedText.Header(rows[0], columns, where, problems, isReading ? Optional : [.. Optional, "eomUm"]);
        problems.ThrowIfAny();
        var reader = new CoatRowReader(header, where, problems, isReading);
        CoatRow[] read = [.. rows.Skip(1).Select(reader.Row).OfType<CoatRow>()];
        problems.ThrowIfAny();
        return read;
    }
}
