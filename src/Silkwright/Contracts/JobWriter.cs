using System.Globalization;
using System.Text.Json.Nodes;

namespace Silkwright.Contracts;

/// <summary>Writes JOB.json, so that <see cref="JobReader"/> reads back the same job.</summary>
public static class JobWriter
{
    public static string Write(JobDocument job)
    {
        var document = new JsonObject { ["name"] = job.Name };
        document.AddIfThere("date", Day(job.Date));
        var garment = new JsonObject();
        garment.AddIfThere("colour", job.Garment.Colour);
        garment.AddIfThere("knit", job.Garment.Knit);
        garment.AddIfThere("dark", job.Garment.Dark);
        if (garment.Count > 0)
            document["garment"] = garment;
        document["run"] = job.Run;
        document.AddIfThere("dueDate", Day(job.DueDate));
        document.AddIfThere("timesPerMonth", job.TimesPerMonth);
        document["colours"] = new JsonArray([.. job.Colours.Select(Colour)]);
        return document.ToJsonString(DocumentJson.Options);
    }

    private static JsonObject Colour(JobDocumentColour colour)
    {
        var document = new JsonObject { ["name"] = colour.Name };
        document.AddIfThere("film", colour.Film);
        if (colour.Needs is { } needs)
        {
            var typed = new JsonObject();
            typed.AddIfThere("finestLineUm", needs.FinestLineUm);
            typed.AddIfThere("finestGapUm", needs.FinestGapUm);
            typed.AddIfThere("rulingLpi", needs.RulingLpi);
            typed.AddIfThere("coveragePercent", needs.CoveragePercent);
            typed.AddIfThere("areaCm2", needs.AreaCm2);
            document["needs"] = typed;
        }

        document.AddIfThere("kind", colour.Kind is { } kind ? Names.Of(kind) : null);
        document["ink"] = Names.Of(colour.Ink);
        document["role"] = Names.Of(colour.Role);
        document["impressionsPerGarment"] = colour.ImpressionsPerGarment;
        return document;
    }

    private static string? Day(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
