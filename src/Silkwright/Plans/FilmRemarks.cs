using System.Globalization;
using Silkwright.Artwork;
using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>What a reader of a film's figures should know.</summary>
public static class FilmRemarks
{
    /// <summary>Films are seldom output more coarsely. Common practice, no source. [1/in]</summary>
    private const double LeastUsualDpi = 400;

    /// <summary>Lettering and drawings have fewer pieces. Our own choice: the demonstration's line work has some hundreds.</summary>
    private const long MostOfLineWork = 20_000;

    /// <summary>What its reading remarked, a resolution that is hardly a film's, and pieces that are hardly line work's.</summary>
    public static IEnumerable<string> Of(FilmMeasurement film)
    {
        ArgumentNullException.ThrowIfNull(film);
        foreach (var remark in film.Remarks)
            yield return remark;
        if (film.Dpi < LeastUsualDpi)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{film.Dpi:0.#} dpi is coarse for a film (600 or more is usual, common practice): a pixel is {25_400 / film.Dpi:0} µm, and no width is known better. Where the film is output more finely than its file says, every width and its size, {film.WidthMm:0} x {film.HeightMm:0} mm, are wrong: save it with its true resolution, or name that.");
        }

        if (film.Halftones.Count == 0 && film.Components.Image + film.Specks.Image > MostOfLineWork)
        {
            yield return $"{Figures.Whole(film.Components.Image + film.Specks.Image)} pieces print, and no halftone with a ruling is among them: this looks like a screen that is not known here (stochastic, of lines, of elliptical dots) or a dirty scan. It is read as line art, so its dots are told as the finest lines and gaps.";
        }
    }
}
