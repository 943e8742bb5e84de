using System.Globalization;
using Silkwright.Statistics.Mixed;

namespace Silkwright.Tests.Statistics.Mixed;

/// <summary>Data made by References/lme4.R and what R's lme4 1.1-31 made of them: `Rscript lme4.R` writes both.</summary>
internal static class ReferenceFits
{
    /// <summary>The columns of a data set by their names.</summary>
    public static Dictionary<string, double[]> Data(string name)
    {
        var lines = Lines($"{name}.csv");
        var rows = lines.Skip(1).Select(line => line.Split(',').Select(Number).ToArray()).ToArray();
        return lines[0].Split(',').Select((column, c) => (column, Values: rows.Select(row => row[c]).ToArray())).ToDictionary(c => c.column, c => c.Values);
    }

    /// <summary>A figure of a data set's fit, for example "criterion" or "shop21".</summary>
    public static double Figure(string name, string what) =>
        Number(Lines("lme4.txt").Select(line => line.Split(' ')).Single(parts => parts[0] == name && parts[1] == what)[2]);

    /// <summary>The data's terms: name and whether a level has a height and a slope over x.</summary>
    public static MixedModel Model(string name, bool weights, params (string Name, bool Height, bool Slope)[] terms)
    {
        var data = Data(name);
        double[] ones = [.. Enumerable.Repeat(1.0, data["y"].Length)];
        return new MixedModel
        {
            Response = data["y"],
            Fixed = [ones, data["x"]],
            Weights = weights ? data["weight"] : null,
            Random = [.. terms.Select(Term)],
        };

        RandomTerm Term((string Name, bool Height, bool Slope) term)
        {
            var levels = data[term.Name].Distinct().Order().ToList();
            IReadOnlyList<double>[] columns = (term.Height, term.Slope) switch { (true, true) => [ones, data["x"]], (true, false) => [ones], _ => [data["x"]] };
            return new RandomTerm(term.Name, [.. data[term.Name].Select(level => levels.IndexOf(level))], levels.Count, columns);
        }
    }

    private static string[] Lines(string file)
    {
        using var stream = typeof(ReferenceFits).Assembly.GetManifestResourceStream($"Silkwright.Tests.Statistics.Mixed.References.{file}")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
