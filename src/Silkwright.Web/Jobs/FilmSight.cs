using Silkwright.Artwork;
using Silkwright.Records.Films;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Jobs;

/// <summary>A film that a job names, as far as it is known here.</summary>
/// <param name="Name">As the job's document names it.</param>
/// <param name="Key">The stored film; none when nobody has given it here.</param>
/// <param name="Measurement">What it demands; none until measured.</param>
/// <param name="Work">How its measuring stands.</param>
public sealed record FilmSight(string Name, FilmKey? Key, FilmMeasurement? Measurement, FilmWork? Work)
{
    /// <summary>The name without folders.</summary>
    public string ShortName => Name[(Name.LastIndexOfAny(['/', '\\']) + 1)..];

    public string ElementId => $"film-{Key?.Address ?? "missing"}";

    public bool IsBusy => Measurement is null && Work is { IsBusy: true };

    public bool CanStop => Measurement is null && Work is { CanStop: true };

    public double Share => Measurement is not null ? 1 : Work?.Share ?? 0;

    public string Words => Measurement is not null ? "measured" : Key is null ? "not given yet" : Work?.Words ?? "waiting";
}
