using Silkwright.Estimates;
using Silkwright.Gauging;

namespace Silkwright.Contracts;

/// <summary>What a gauge's file holds: taken, taken with a flag, and given back. Every row is in one of them.</summary>
public sealed record GaugeFile
{
    public required IReadOnlyList<string> Header { get; init; }

    public required IReadOnlyList<GaugeEntry> Entries { get; init; }

    /// <summary>What is odd about entries that were taken, by line.</summary>
    public required IReadOnlyList<(int Line, Problem Problem)> Flagged { get; init; }

    public required IReadOnlyList<RefusedReading> Refused { get; init; }

    public required IReadOnlyList<Note> Notes { get; init; }

    /// <summary>The rows that were not taken, as a file to put right and read again; each with why and what to do. Empty where all were taken.</summary>
    public string RefusedText => Refused.Count == 0
        ? ""
        : string.Concat(new[] { Header.Append("refused because").Append("remedy") }
            .Concat(Refused.Select(row => row.Fields.Concat(Enumerable.Repeat("", Math.Max(0, Header.Count - row.Fields.Count)))
                .Append(string.Join(' ', row.Problems.Select(problem => problem.What))).Append(string.Join(' ', row.Problems.Select(problem => problem.Remedy)))))
            .Select(fields => string.Join(',', fields.Select(Quoted)) + "\r\n"));

    // RFC 4180, and no cell that a spreadsheet would run as a formula.
    private static string Quoted(string field)
    {
        var safe = field.Length > 0 && "=+@\t\r".Contains(field[0], StringComparison.Ordinal) ? "'" + field : field;
        return safe.AsSpan().IndexOfAny(",;\"\n\r") < 0 ? safe : $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
