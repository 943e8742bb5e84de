using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>Reads JOB.json: docs/schema/job.json.</summary>
public static class JobReader
{
    private const int MostColours = 24;

    /// <param name="json">The document.</param>
    /// <param name="where">The file's name, for messages.</param>
    /// <exception cref="InputProblemException">Every fault of the document.</exception>
    public static JobDocument Read(string json, string where)
    {
        var problems = new ProblemList();
        var root = DocumentField.Root(json, where, problems);
        problems.ThrowIfAny();
        var job = new JobDocument
        {
            Name = root["name"].Text() ?? "A job without a name",
            Date = root["date"].Date(),
            Garment = Garment(root["garment"]),
            Run = root["run"].RequiredCount(1, InputLimits.MostImpressions),
            DueDate = root["dueDate"].Date(),
            TimesPerMonth = root["timesPerMonth"].Number("1/month", 0.01, 1000),
            Colours = [.. root["colours"].Entries(MostColours).Select(Colour)],
        };
        if (job.Colours.Count == 0 && problems.Problems.All(problem => problem.Where != root["colours"].Path))
            problems.Add($"A job has 1 to {MostColours} colours.", root["colours"].Path, "List each colour with its ink: \"colours\": [{\"ink\": \"plastisol\"}].");
        root.RefuseSlips();
        problems.ThrowIfAny();
        return job;
    }

    private static Garment Garment(DocumentField field) =>
        new(field["colour"].Text(), field["knit"].Text(), field["dark"].YesNo());

    private static JobDocumentColour Colour(DocumentField field, int index) => new()
    {
        Name = field["name"].Text() ?? $"Colour {index + 1}",
        Film = field["film"].Name("Name the film's file, or leave \"film\" out."),
        Needs = Needs(field["needs"]),
        Kind = field["kind"].Choice<WorkKind>(),
        Ink = field["ink"].RequiredChoice<InkKind>(),
        Role = field["role"].Choice<InkRole>() ?? InkRole.Colour,
        ImpressionsPerGarment = field["impressionsPerGarment"].Count(1, 12) ?? 1,
    };

    private static TypedNeeds? Needs(DocumentField field) => !field.IsThere ? null : new TypedNeeds(
        field["finestLineUm"].Number("µm", InputLimits.LeastDetailUm, InputLimits.MostDetailUm),
        field["finestGapUm"].Number("µm", InputLimits.LeastDetailUm, InputLimits.MostDetailUm),
        field["rulingLpi"].Number("1/in", 10, 200),
        field["coveragePercent"].Number("%", InputLimits.LeastCoveragePercent, 100),
        field["areaCm2"].Number("cm²", InputLimits.LeastAreaCm2, InputLimits.MostAreaCm2));
}
