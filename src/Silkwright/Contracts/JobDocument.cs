using Silkwright.Artwork;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>A job as its file says it: films by name, not yet measured.</summary>
public sealed record JobDocument
{
    public required string Name { get; init; }

    /// <summary>Day the plan is for; none: today.</summary>
    public DateOnly? Date { get; init; }

    public Garment Garment { get; init; } = new();

    public required long Run { get; init; }

    public DateOnly? DueDate { get; init; }

    /// <summary>How often such a job comes in a month; none: once.</summary>
    public double? TimesPerMonth { get; init; }

    public required IReadOnlyList<JobDocumentColour> Colours { get; init; }

    /// <summary>The films named, in order, each once.</summary>
    public IReadOnlyList<string> Films => [.. Colours.Select(c => c.Film).OfType<string>().Distinct()];

    /// <summary>The job with its films measured.</summary>
    /// <param name="today">Stands in for a missing date.</param>
    /// <param name="films">The measurement of every film named in <see cref="Films"/>.</param>
    public Job ToJob(DateOnly today, IReadOnlyDictionary<string, FilmMeasurement> films) => new()
    {
        Name = Name,
        Date = Date ?? today,
        Garment = Garment,
        Run = Run,
        DueDate = DueDate,
        Colours = [.. Colours.Select(c => new JobColour
        {
            Name = c.Name,
            Ink = c.Ink,
            Role = c.Role,
            Film = c.Film is null ? null : films[c.Film],
            Needs = c.Needs,
            Kind = c.Kind,
            ImpressionsPerGarment = c.ImpressionsPerGarment,
        })],
    };
}
