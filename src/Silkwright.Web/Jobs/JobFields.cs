using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Web.Jobs;

/// <summary>A job as typed into the form.</summary>
public sealed record JobFields
{
    /// <summary>Colours a form can carry; the document's own limit.</summary>
    private const int MostColours = 24;

    public string Name { get; init; } = "";

    public string Garment { get; init; } = "";

    public string Knit { get; init; } = "";

    public bool Dark { get; init; }

    public string Run { get; init; } = "";

    /// <summary>As a date field gives it: 2026-11-27.</summary>
    public string Due { get; init; } = "";

    public IReadOnlyList<ColourFields> Colours { get; init; } = [];

    public static JobFields Of(JobDocument job) => new()
    {
        Name = job.Name,
        Garment = job.Garment.Colour ?? "",
        Knit = job.Garment.Knit ?? "",
        Dark = job.Garment.Dark ?? false,
        Run = job.Run.ToString(CultureInfo.InvariantCulture),
        Due = job.DueDate?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
        Colours = [.. job.Colours.Select(ColourFields.Of)],
    };

    public static JobFields Of(IFormCollection form) => new()
    {
        Name = form["name"].ToString().Trim(),
        Garment = form["garment"].ToString().Trim(),
        Knit = form["knit"].ToString().Trim(),
        Dark = form["dark"].Count > 0,
        Run = form["run"].ToString().Trim(),
        Due = form["due"].ToString().Trim(),
        Colours = [.. Enumerable.Range(0, MostColours)
            .Where(i => form.ContainsKey($"c{i}.ink") && form[$"c{i}.drop"].Count == 0)
            .Select(i => ColourFields.Of(form, i))
            .Where(c => !c.IsBlank)],
    };

    /// <summary>The document these fields make.</summary>
    /// <exception cref="InputProblemException">Every fault of the form.</exception>
    public JobDocument ToDocument()
    {
        var problems = new ProblemList();
        if (Name.Length == 0)
            problems.Add("The job has no name.", "name", "Call it what the shop calls it.");
        var garment = new JsonObject { ["dark"] = Dark };
        FormJson.AddText(garment, "colour", Garment);
        FormJson.AddText(garment, "knit", Knit);
        var job = new JsonObject { ["garment"] = garment };
        FormJson.AddText(job, "name", Name);
        FormJson.AddNumber(job, "run", Run, "run", problems);
        FormJson.AddText(job, "dueDate", Due);
        job["colours"] = new JsonArray([.. Colours.Select((c, i) => c.ToDocument(c.Name.Length > 0 ? c.Name : $"colour {i + 1}", problems))]);
        try
        {
            var document = JobReader.Read(job.ToJsonString(), "this form");
            problems.ThrowIfAny();
            return document;
        }
        catch (InputProblemException fault) when (!problems.IsEmpty)
        {
            // Typed faults first, the document's own behind them; a field that was not a number is missing there and told once.
            throw new InputProblemException([.. problems.Problems.Concat(fault.Problems).DistinctBy(p => p.What)]);
        }
    }
}
