using System.Globalization;
using Silkwright.Gauging;

namespace Silkwright.Tests.Gauging;

/// <summary>Data of References/study.R and what R 4.2.2 with lme4 1.1-31 made of them: `Rscript study.R` writes both.</summary>
internal static class StudyReferences
{
    public static IReadOnlyList<StudyReading> Study(string name) =>
        [.. Lines($"{name}.csv").Skip(1).Select((line, i) => line.Split(',') is [var part, var hand, var y] ? new StudyReading(part, hand, Number(y), i + 2) : throw new FormatException(line))];

    public static IReadOnlyList<double[]> Columns(string name)
    {
        var rows = Lines($"{name}.csv").Skip(1).Select(line => line.Split(',').Select(Number).ToArray()).ToArray();
        return [.. Enumerable.Range(0, rows[0].Length).Select(c => rows.Select(row => row[c]).ToArray())];
    }

    /// <summary>The figures of a line that begins with these words.</summary>
    public static double[] Figures(string words) =>
        [.. Lines("study.txt").Single(line => line.StartsWith(words + " ", StringComparison.Ordinal))[words.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number)];

    private static string[] Lines(string file)
    {
        using var stream = typeof(StudyReferences).Assembly.GetManifestResourceStream($"Silkwright.Tests.Gauging.References.{file}")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
