using System.Globalization;
using System.Text.Json;
using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Jobs;

/// <summary>The two fields of a job's document that lists sort and show.</summary>
internal static class JobHeading
{
    /// <exception cref="InputProblemException">The name is missing, or the due date is not a day.</exception>
    public static (string Name, DateOnly? DueDate) Read(string text)
    {
        using var document = DocumentText.Parse(text);
        var root = document.RootElement;
        var problems = new ProblemList();
        var name = root.TryGetProperty("name", out var n) && n.ValueKind == JsonValueKind.String ? n.GetString()!.Trim() : "";
        if (name.Length == 0)
            problems.Add("The job has no name.", "job, name", "Give it the name the shop calls it by.");
        DateOnly? dueDate = null;
        if (root.TryGetProperty("dueDate", out var due) && due.ValueKind != JsonValueKind.Null)
        {
            if (due.ValueKind == JsonValueKind.String
                && DateOnly.TryParseExact(due.GetString(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
                dueDate = day;
            else
                problems.Add($"{due.GetRawText()} is not a day.", "job, dueDate", "Write it as 2026-11-25.");
        }

        problems.ThrowIfAny();
        return (name, dueDate);
    }
}
