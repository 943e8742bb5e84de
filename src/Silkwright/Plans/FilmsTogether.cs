namespace Silkwright.Plans;

/// <summary>The films of one job held against each other. docs/engines/film.md, "Films of one job".</summary>
public sealed record FilmsTogether
{
    /// <summary>None with fewer than two films.</summary>
    public bool? SameSize { get; init; }

    /// <summary>None with fewer than two films.</summary>
    public bool? SameDpi { get; init; }

    /// <summary>How far the register marks of each film lie from those of the first that has some.</summary>
    public IReadOnlyList<RegisteredFilm> Register { get; init; } = [];

    /// <summary>Films that are each other's copy or mirror image, or fit each other only when mirrored.</summary>
    public IReadOnlyList<FilmPair> MirroredOrDuplicate { get; init; } = [];

    /// <summary>Whether each image lies inside its frame with room for the squeegee; none where no frame is known.</summary>
    public bool? FitsFrame { get; init; }

    /// <summary>What a person should know before coating, each with its remedy.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}
