using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>Reads JOB.json: docs/schema/job.json.</summary>
public static class JobReader
{
    private const double MostImpressions = 10_000_000;
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
            Run = root["run"].RequiredCount(1, (long)MostImpressions),
            DueDate = root["dueDate"].Date(),
            Colours = [.. root["colours"].Entries().Select(Colour)],
        };
        if (job.Colours.Count is 0 or > MostColours)
            problems.Add("A job has 1 to 24 colours.", $"{where}: colours", "List each colour with its ink: \"colours\": [{\"ink\": \"plastisol\"}].");
        problems.ThrowIfAny();
        return job;
    }

    private static Garment Garment(DocumentField field) =>
        new(field["colour"].Text(), field["knit"].Text(), field["dark"].YesNo());

    private static JobDocumentColour Colour(DocumentField field, int index) => new()
    {
        Name = field["name"].Text() ?? $"Colour {index + 1}",
        Film = field["film"].Text(),
        Needs = Needs(field["needs"]),
        Kind = field["kind"].Choice<WorkKind>(),
        Ink = field["ink"].RequiredChoice<InkKind>(),
        Role = field["role"].Choice<InkRole>() ?? InkRole.Colour,
        ImpressionsPerGarment = field["impressionsPerGarment"].Count(1, 12) ?? 1,
    };

    private static TypedNeeds? Needs(DocumentField field) => !field.IsThere ? null : new TypedNeeds(
        field["finestLineUm"].Number("µm", 10, 50_000),
        field["finestGapUm"].Number("µm", 10, 50_000),
        field["rulingLpi"].Number("1/in", 10, 200),
        field["coveragePercent"].Number("%", 0.01, 100),
        field["areaCm2"].Number("cm²", 0.1, 20_000));
}
