using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Records.Films;
using Silkwright.Records.Jobs;

namespace Silkwright.Web.Jobs;

/// <summary>A job as a page sees it: its document, its films, and the plan once all films are measured.</summary>
public sealed record JobSight(
    JobRevision Revision,
    JobDocument Document,
    IReadOnlyList<FilmSight> Films,
    StencilPlan? Plan,
    IReadOnlyList<Problem> Problems)
{
    public string Url => $"/jobs/{Revision.JobId}";

    /// <summary>Some film is still being measured.</summary>
    public bool IsBusy => Films.Any(f => f.IsBusy);

    /// <summary>The pictures of a colour's film; none without a stored film.</summary>
    public string? FilmUrl(int colour) => FilmKey(colour) is { } film ? $"/films/{film.Address}" : null;

    /// <summary>A colour's stored film; none where it has none.</summary>
    public FilmKey? FilmKey(int colour) => Films.FirstOrDefault(f => f.Name == Document.Colours[colour].Film)?.Key;
}
