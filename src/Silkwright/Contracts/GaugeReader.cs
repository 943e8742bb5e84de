using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Reads the files that thickness gauges write: docs/engines/gauging.md, "The file". No row is lost: each is taken, taken with a flag, or given back.</summary>
public static class GaugeReader
{
    public const int MostRows = 20_000;

    /// <param name="text">The file's text.</param>
    /// <param name="where">Its name, for messages.</param>
    /// <param name="unit">Unit of the thicknesses where the file tells none: um or mil.</param>
    /// <param name="bareUm">Thickness of the bare mesh, to hold coated readings against. [µm]</param>
    /// <exception cref="InputProblemException">The file as a whole can't be read: no header, no thickness, no unit.</exception>
    public static GaugeFile Read(string text, string where, string? unit = null, double? bareUm = null)
    {
        var problems = new ProblemList();
        var rows = SeparatedText.Read(text, where, problems);
        SeparatedText.RefuseLongRows(rows, where, problems);
        if (rows.Count < 2)
            problems.Add("There are no readings in it.", where, $"Begin with a header of the columns there are, out of {string.Join(", ", GaugeColumns.Taken)}; then a line a reading.");
        else if (rows.Count - 1 > MostRows)
            problems.Add($"It has {rows.Count - 1} readings.", where, $"Give {MostRows} at most at once.");
        problems.ThrowIfAny();
        var columns = new GaugeColumns(rows[0].Fields, i => SeparatedText.Place(where, rows[0].Line, i + 1), problems);
        string[] thicknesses = [.. GaugeRow.Thicknesses.Where(columns.Has)];
        if (thicknesses.Length == 0)
            problems.Add("No column holds a thickness.", SeparatedText.Place(where, rows[0].Line, 1), "Call it coated, bare or eom, with its unit: coated (um).");
        else if (unit is null && !columns.Has("unit") && thicknesses.Any(name => !columns.Units.ContainsKey(name)) && !rows.Skip(1).All(row => thicknesses.All(name => columns.Of(row, name) is not { } field || !char.IsDigit(field[^1]))))
            problems.Add("The unit of the thicknesses is not told.", SeparatedText.Place(where, rows[0].Line, columns.At(thicknesses[0]) + 1), "Write it in the header, as in coated (um) or coated (mil), in a column unit, or choose it with the file.");
        problems.ThrowIfAny();

        GaugeRow[] read = [.. rows.Skip(1).Select(row => GaugeRow.Of(row, columns, where, unit))];
        GaugeRowChecks.Of(read, bareUm);
        return new GaugeFile
        {
            Header = rows[0].Fields,
            Entries = [.. read.Where(row => row.Refusals.Count == 0).Select(row => row.Entry)],
            Flagged = [.. read.Where(row => row.Refusals.Count == 0).SelectMany(row => row.Flags.Select(flag => (row.Entry.Line, flag)))],
            Refused = [.. read.Where(row => row.Refusals.Count > 0).Select(row => new RefusedReading(row.Entry.Line, row.Fields, row.Refusals))],
            Notes = [.. Notes(read, columns, unit)],
        };
    }

    private static IEnumerable<Note> Notes(GaugeRow[] read, GaugeColumns columns, string? unit)
    {
        yield return new Note(string.Create(
            CultureInfo.InvariantCulture,
            $"{read.Count(row => row.Refusals.Count == 0)} of {read.Length} readings were taken, {read.Count(row => row.Refusals.Count == 0 && row.Flags.Count > 0)} of them flagged; {read.Count(row => row.Refusals.Count > 0)} are given back."));
        if (unit is not null && columns.Units.Count == 0 && !columns.Has("unit"))
            yield return new Note($"The file tells no unit: its numbers were taken as {unit}.");
        if (read.Any(row => row.HasComma))
            yield return new Note("A comma inside a number was read as the decimal sign.");
        foreach (var (first, other, meaning) in columns.Twice)
            yield return new Note($"{first} was read as the {meaning}, and {other} passed over.");
        if (!columns.Has("screen"))
            yield return new Note("No column names the screen: readings can't be paired or studied by screen.");
        if (!columns.Has("operator"))
            yield return new Note("No column names the operator.");
    }
}
