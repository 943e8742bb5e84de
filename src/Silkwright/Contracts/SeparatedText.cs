using System.Text;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Takes text apart that is separated by commas or semicolons, quoted as RFC 4180 has it.</summary>
/// <remarks>
/// Whichever of the two comes first in the header separates. Lines may end in LF, CR LF or CR; a byte order mark is passed over; a
/// quoted field may hold separators, line ends and doubled quotes. Blank lines are left out.
/// </remarks>
internal sealed class SeparatedText
{
    private readonly string text;
    private readonly string where;
    private readonly ProblemList problems;
    private readonly char separator;
    private int at;
    private int line = 1;

    private SeparatedText(string text, string where, ProblemList problems)
    {
        this.text = text;
        this.where = where;
        this.problems = problems;
        at = text.StartsWith('\uFEFF') ? 1 : 0;
        separator = SeparatorOf(text);
    }

    /// <summary>Where each column stands; further ones are passed over, unless they look like a known one written wrong.</summary>
    /// <param name="row">The header.</param>
    /// <param name="columns">Those that must be there.</param>
    /// <param name="where">The file's name, for faults.</param>
    /// <param name="problems">Takes the faults: a column missing, there twice, or written wrong.</param>
    /// <param name="optional">Those that may be there.</param>
    public static Dictionary<string, int> Header(SeparatedRow row, IReadOnlyList<string> columns, string where, ProblemList problems, IReadOnlyList<string>? optional = null)
    {
        string[] known = [.. columns, .. optional ?? []];
        var header = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < row.Fields.Count; i++)
        {
            var name = row.Fields[i].Trim();
            if (!header.TryAdd(name, i) && name.Length > 0)
                problems.Add($"The column {NearName.Shown(name)} is there twice.", Place(where, row.Line, i + 1), "Keep one of the two.");
        }

        var meant = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var (name, at) in header.Where(column => !known.Contains(column.Key, StringComparer.OrdinalIgnoreCase)))
        {
            if (NearName.Of(name, known) is not { } near || header.ContainsKey(near))
                continue;
            problems.Add($"The column {NearName.Shown(name)} is not known and would be passed over.", Place(where, row.Line, at + 1), $"Write {near} if that is meant, or give it a name that is not so near.");
            _ = meant.Add(near);
        }

        foreach (var missing in columns.Where(name => !header.ContainsKey(name) && !meant.Contains(name)))
            problems.Add($"There is no column {missing}.", Place(where, row.Line, row.Fields.Count + 1), $"The header is {string.Join(',', columns)}, separated by , or ;.");
        return header;
    }

    /// <summary>The records, the header first.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="where">The file's name, for faults.</param>
    /// <param name="problems">Takes the faults of quoting.</param>
    public static IReadOnlyList<SeparatedRow> Read(string text, string where, ProblemList problems)
    {
        var reader = new SeparatedText(text, where, problems);
        var rows = new List<SeparatedRow>();
        while (reader.at < text.Length)
        {
            var row = reader.Row();
            if (!row.IsBlank)
                rows.Add(row);
        }

        return rows;
    }

    /// <summary>Tells lines that have more values than the header has names: a decimal comma among commas splits a number in two, and its head alone would be read.</summary>
    /// <param name="rows">The header first.</param>
    /// <param name="where">The file's name.</param>
    /// <param name="problems">Takes the faults.</param>
    public static void RefuseLongRows(IReadOnlyList<SeparatedRow> rows, string where, ProblemList problems)
    {
        foreach (var row in rows.Skip(1))
        {
            if (row.Fields.Skip(rows[0].Fields.Count).Any(field => !string.IsNullOrWhiteSpace(field)))
                problems.Add($"This line has {row.Fields.Count} values, and the header {rows[0].Fields.Count} names.", Place(where, row.Line, rows[0].Fields.Count + 1), "Write decimals with a point, and put a text that holds the separator into quotes.");
        }
    }

    /// <summary>Where a field stands, in words: line, and column counted from 1.</summary>
    public static string Place(string where, int line, int column) => $"{where}: line {line}, column {column}";

    private static char SeparatorOf(string text)
    {
        var quoted = false;
        foreach (var c in text)
        {
            quoted ^= c == '"';
            if (!quoted && c is ',' or ';')
                return c;
            if (!quoted && c is '\n' or '\r')
                break;
        }

        return ',';
    }

    private SeparatedRow Row()
    {
        var begins = line;
        var fields = new List<string>();
        do
            fields.Add(at < text.Length && text[at] == '"' ? Quoted(fields.Count + 1) : Plain());
        while (Passes(separator));
        EndLine();
        return new SeparatedRow(begins, fields, separator);
    }

    private string Plain()
    {
        var from = at;
        while (at < text.Length && text[at] != separator && text[at] is not ('\n' or '\r'))
            at++;
        return text[from..at];
    }

    private string Quoted(int column)
    {
        var begins = line;
        var field = new StringBuilder();
        at++;
        while (at < text.Length)
        {
            if (text[at] != '"')
            {
                line += text[at] == '\n' || (text[at] == '\r' && !Follows('\n')) ? 1 : 0;
                field.Append(text[at++]);
            }
            else if (Follows('"'))
            {
                field.Append('"');
                at += 2;
            }
            else
            {
                at++;
                if (Plain().Trim() is { Length: > 0 } stray)
                    problems.Add($"'{Shown(stray)}' stands after the closing quote.", Place(where, line, column), "Double every quote inside a quoted field, and close it at its end.");
                return field.ToString();
            }
        }

        problems.Add("This quote is never closed.", Place(where, begins, column), "Close it at the end of the field.");
        return field.ToString();
    }

    private bool Follows(char c) => at + 1 < text.Length && text[at + 1] == c;

    private bool Passes(char c)
    {
        if (at >= text.Length || text[at] != c)
            return false;
        at++;
        return true;
    }

    private void EndLine()
    {
        if (Passes('\r') | Passes('\n'))
            line++;
    }

    private static string Shown(string stray) => stray.Length > 20 ? $"{stray[..20]}…" : stray;
}
