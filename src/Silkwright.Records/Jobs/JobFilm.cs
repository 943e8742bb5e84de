using Silkwright.Records.Films;

namespace Silkwright.Records.Jobs;

/// <summary>Which stored film a job means by a name in its document. The latest of a name holds.</summary>
public sealed record JobFilm
{
    public required string JobId { get; init; }

    /// <summary>As the job's document writes it, such as "../films/lantern-walk-base.tif".</summary>
    public required string NameInJob { get; init; }

    /// <summary>Counts from 1 for each name.</summary>
    public required int Version { get; init; }

    /// <summary>SHA-256 of the film, lower-case hex.</summary>
    public required string FilmHash { get; init; }

    /// <summary>Page of a PDF, from 1; every other file has one film.</summary>
    public int Page { get; init; } = 1;

    /// <summary>Resolution a PDF's page is drawn at; none: the usual one. [1/in]</summary>
    public double? Dpi { get; init; }

    public required DateTimeOffset AttachedAt { get; init; }

    public required string AttachedBy { get; init; }

    /// <summary>The film as the job looks at it.</summary>
    public FilmKey Key => new(FilmHash, Page, Dpi);
}
