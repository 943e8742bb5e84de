using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>One row of a separated table, its fields read by the names of their columns; faults go to the table's list.</summary>
internal sealed class RowFields(SeparatedRow row, Dictionary<string, int> header, string where, ProblemList problems)
{
    /// <summary>A field, trimmed; none where it is empty or its column is not there.</summary>
    public string? Text(string column) =>
        header.TryGetValue(column, out var at) && at < row.Fields.Count && row.Fields[at].Trim() is { Length: > 0 } text ? text : null;

    /// <summary>A number within bounds; none where the field is empty, or a fault was told.</summary>
    /// <param name="column">Its column.</param>
    /// <param name="least">Least that makes sense.</param>
    /// <param name="most">Most that makes sense.</param>
    /// <param name="remedy">What to do about one that is none; the unit is in the column's name where nothing is said.</param>
    public double? Number(string column, double least, double most, string remedy = "Write a plain number with a point for decimals; the unit is in the column's name.")
    {
        if (Text(column) is not { } text)
            return null;
        if (row.TryNumber(text, out var number) && number >= least && number <= most)
            return number;
        Fault(column, string.Create(CultureInfo.InvariantCulture, $"'{Shown(text)}' is no number from {least} to {most}."), remedy);
        return null;
    }

    public bool? YesNo(string column)
    {
        switch (Text(column)?.ToLowerInvariant())
        {
            case null:
                return null;
            case "1" or "yes" or "true":
                return true;
            case "0" or "no" or "false":
                return false;
            case var text:
                Fault(column, $"'{Shown(text)}' is neither 0 nor 1.", "Write 1 for yes and 0 for no, or leave it empty.");
                return null;
        }
    }

    public DateOnly? Date(string column)
    {
        if (Text(column) is not { } text)
            return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return date;
        Fault(column, $"'{Shown(text)}' is not a date.", "Write year-month-day, as in 2026-11-25.");
        return null;
    }

    public void Fault(string column, string what, string remedy) => problems.Add(what, SeparatedText.Place(where, row.Line, ColumnOf(column)), remedy);

    /// <summary>Where a column stands, from 1; the first where there is none of that name.</summary>
    public int ColumnOf(string column) => header.GetValueOrDefault(column, 0) + 1;

    private static string Shown(string text) => text.Length > 20 ? $"{text[..20]}…" : text;
}
