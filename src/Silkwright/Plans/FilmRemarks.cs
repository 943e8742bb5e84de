using System.Globalization;
using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>What a reader of a film's figures should know.</summary>
public static class FilmRemarks
{
    /// <summary>Films are seldom output more coarsely. Common practice, no source. [1/in]</summary>
    private const double LeastUsualDpi = 400;

    /// <summary>What its reading remarked, and a resolution that is hardly a film's.</summary>
    public static IEnumerable<string> Of(FilmMeasurement film)
    {
        ArgumentNullException.ThrowIfNull(film);
        return film.Dpi >= LeastUsualDpi ? film.Remarks :
        [
            .. film.Remarks,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{film.Dpi:0.#} dpi is coarse for a film (600 or more is usual, common practice): a pixel is {25_400 / film.Dpi:0} µm, and no width is known better. Where the film is output more finely than its file says, every width and its size, {film.WidthMm:0} x {film.HeightMm:0} mm, are wrong: save it with its true resolution, or name that."),
        ];
    }
}
