namespace Silkwright.Records.Films;

/// <summary>What a film was found to demand, so that it is measured once.</summary>
public sealed record StoredMeasurement
{
    public required string FilmHash { get; init; }

    /// <summary>The options of the measurement in one word: <see cref="MeasuringKey.Options"/>.</summary>
    public required string Options { get; init; }

    /// <summary>The way of measuring; a better one measures again.</summary>
    public required string MeasuringVersion { get; init; }

    /// <summary>The measurement as JSON.</summary>
    public required string Json { get; init; }

    public required DateTimeOffset MeasuredAt { get; init; }
}
