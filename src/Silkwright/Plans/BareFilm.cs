using Silkwright.Artwork;
using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>A film without artwork: one value all over, but for specks. docs/engines/film.md, "Bare films".</summary>
public static class BareFilm
{
    /// <summary>What is on it and what to do; none where there is artwork.</summary>
    public static string? Words(FilmMeasurement film)
    {
        ArgumentNullException.ThrowIfNull(film);
        return (film.Components, film.Specks) switch
        {
            ({ Image: 0 }, { Image: > 0 and var specks }) =>
                $"Nothing but {Specks(specks)} is on this film: there is no artwork. {Look} dust on a scanned page, or a tint at so low a resolution that its dots are specks.",
            ({ Image: 0 }, _) => $"Nothing prints anywhere on this film: there is no artwork. {Look} or black and clear exchanged.",
            ({ Gap: 0 }, { Gap: > 0 and var specks }) =>
                $"All of this film prints but for {Specks(specks)}: there is no artwork. {Look} dust on a scanned page, or black and clear exchanged.",
            ({ Gap: 0 }, _) => $"All of this film prints: there is no artwork. {Look} or black and clear exchanged.",
            _ => null,
        };
    }

    /// <summary>There is no artwork on a colour's film.</summary>
    public static bool Is(FilmMeasurement? film) => film is not null && Words(film) is not null;

    private const string Look = "Look at the file before anything is coated: it may be another file than meant, an empty page,";

    private static string Specks(long count) => $"{Figures.Whole(count)} {(count == 1 ? "speck" : "specks")} of four pixels or fewer";
}
