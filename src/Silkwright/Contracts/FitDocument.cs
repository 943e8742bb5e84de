using System.Text.Json.Nodes;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>A fitted working curve as other programs read it: silkwright/expose-fit/1, docs/schema/expose-fit.json.</summary>
public static class FitDocument
{
    /// <summary>Columns of the table that is fitted.</summary>
    public static readonly IReadOnlyList<string> Columns = ["doseMjPerCm2", "curedDepthUm"];

    /// <summary>Fits a table of doses and depths, by least squares and robustly.</summary>
    /// <param name="text">The table, with a header.</param>
    /// <param name="where">The file's name, for faults.</param>
    /// <exception cref="InputProblemException">Every fault of the table.</exception>
    public static DepthFit Read(string text, string where)
    {
        var problems = new ProblemList();
        var rows = SeparatedText.Read(text, where, problems);
        SeparatedText.RefuseLongRows(rows, where, problems);
        if (rows.Count < 4)
            problems.Add($"It has {Math.Max(0, rows.Count - 1)} rows below its header.", where, $"Give the header {string.Join(',', Columns)} and three pairs or more.");
        problems.ThrowIfAny();
        var header = SeparatedText.Header(rows[0], Columns, where, problems);
        problems.ThrowIfAny();
        var pairs = rows.Skip(1).Select(row => (Dose: Number(row, Columns[0]), Depth: Number(row, Columns[1]))).ToArray();
        problems.ThrowIfAny();
        double[] doses = [.. pairs.Select(pair => pair.Dose)], depths = [.. pairs.Select(pair => pair.Depth)];
        try
        {
            return DepthFit.Of(doses, depths);
        }
        catch (ArgumentException)
        {
            throw new InputProblemException(new Problem("No working curve fits these pairs.", where, "The depths must grow with the dose, over two doses or more that differ."));
        }

        double Number(SeparatedRow row, string column)
        {
            var at = header[column];
            var field = at < row.Fields.Count ? row.Fields[at].Trim() : "";
            if (row.TryNumber(field, out var number) && number is > 0 and < 1e6)
                return number;
            problems.Add(field.Length == 0 ? $"{column} is missing." : "This is no number above 0.", SeparatedText.Place(where, row.Line, at + 1), "Write a plain number with a point for decimals.");
            return 1;
        }
    }

    public static JsonObject Of(DepthFit fit)
    {
        var document = Part(fit.Least);
        var whole = DocumentJson.Start("expose-fit");
        foreach (var (name, node) in document)
            whole[name] = node?.DeepClone();
        whole["robust"] = Part(fit.Robust);
        whole["points"] = CurveDocument.PointsOf(fit.Points);
        whole["notes"] = DocumentJson.Of(NotesOn(fit));
        return whole;
    }

    /// <summary>Where the two ways of fitting part, a pair went wrong.</summary>
    public static IEnumerable<Note> NotesOn(DepthFit fit)
    {
        var wild = Enumerable.Range(0, fit.DepthsUm.Count).Where(fit.IsWild).Select(pair => pair + 1).ToArray();
        if (wild.Length > 0)
            yield return new Note($"Row {string.Join(", ", wild)} lies off the line the others make: read it again. The robust fit leaves it out.");
        yield return new Note("The pair belongs to the lamp and the meter it was found with.");
    }

    private static JsonObject Part(WorkingCurveFit fit) => new()
    {
        ["penetrationDepthUm"] = fit.Curve.PenetrationDepthUm,
        ["criticalDoseMjPerCm2"] = fit.Curve.CriticalDoseMjPerCm2,
        ["standardErrors"] = new JsonObject { ["penetrationDepthUm"] = fit.PenetrationDepthStandardErrorUm, ["criticalDoseMjPerCm2"] = fit.CriticalDoseStandardErrorMjPerCm2 },
    };
}
