using System.Globalization;
using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>Holds the films of one job against each other before anything is coated.</summary>
internal static class FilmsCheck
{
    public static FilmsTogether Of(IReadOnlyList<JobColour> colours, IReadOnlyList<bool?> fits) =>
        Of([.. colours.Select(colour => colour.Film).OfType<FilmMeasurement>()], fits);

    /// <summary>Films alone, before any frame is chosen.</summary>
    public static FilmsTogether Of(IReadOnlyList<FilmMeasurement> films) => Of(films, []);

    private static FilmsTogether Of(IReadOnlyList<FilmMeasurement> films, IReadOnlyList<bool?> fits)
    {
        var remarks = new List<string>();
        var sameSize = Alike(films, film => (film.WidthPx, film.HeightPx, film.Dpi));
        if (sameSize == false)
        {
            remarks.Add("The films differ in size: " + string.Join("; ", films.Select(film =>
                string.Create(CultureInfo.InvariantCulture, $"{film.File} {film.WidthMm:0.0} x {film.HeightMm:0.0} mm"))) + ". Separations of one job usually agree to the pixel.");
        }

        var sameDpi = Alike(films, film => film.Dpi);
        if (sameDpi == false)
            remarks.Add("The films differ in resolution: " + string.Join("; ", films.Select(film => string.Create(CultureInfo.InvariantCulture, $"{film.File} {film.Dpi:0} dpi"))) + ".");
        bool? fitsFrame = fits.All(fit => fit is null) ? null : fits.All(fit => fit != false);
        if (fitsFrame == false)
            remarks.Add(string.Create(CultureInfo.InvariantCulture, $"No frame with the chosen mesh leaves {FrameChoice.MarginMm:0} mm beside the film on every side."));
        return new FilmsTogether(sameSize, sameDpi, fitsFrame, remarks);
    }

    private static bool? Alike<T>(IReadOnlyList<FilmMeasurement> films, Func<FilmMeasurement, T> of) =>
        films.Count < 2 ? null : films.Select(of).Distinct().Count() == 1;
}
