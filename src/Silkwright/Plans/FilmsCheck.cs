using System.Globalization;
using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>Holds the films of one job against each other before anything is coated.</summary>
internal static class FilmsCheck
{
    /// <summary>More films than this are not held against each other. Our own choice: more than any job has, and every pair takes its time.</summary>
    private const int MostFilms = 24;

    /// <summary>The films of a plan.</summary>
    public static FilmsTogether Of(IReadOnlyList<ColourPlan> colours) =>
        Of([.. colours.Where(plan => plan.Colour.Film is not null).Select(plan => new JobSheet(plan.Colour.Film!, plan.Colour.Role == InkRole.Underbase, plan.Frame))]);

    /// <summary>Films alone, before anything is chosen.</summary>
    /// <param name="films">In the order they were given.</param>
    /// <param name="frame">A frame they are to fit.</param>
    public static FilmsTogether Of(IReadOnlyList<FilmMeasurement> films, Frame? frame = null) =>
        Of([.. films.Select(film => new JobSheet(film, false, frame))]);

    private static FilmsTogether Of(IReadOnlyList<JobSheet> sheets)
    {
        var films = sheets.Select(sheet => sheet.Film).ToArray();
        List<string> remarks = [.. films.Distinct().Select(film => (film.File, Bare: BareFilm.Words(film))).Where(film => film.Bare is not null).Select(film => $"{film.File}: {film.Bare}")];
        var sameSize = Alike(films, film => (film.WidthPx, film.HeightPx, film.Dpi));
        if (sameSize == false)
            remarks.Add("The films differ in size: " + List(films, film => Say($"{film.File} {film.WidthMm:0.0} x {film.HeightMm:0.0} mm, {film.WidthPx} x {film.HeightPx} px")) + ". Separations of one job usually agree to the pixel: output the odd one again with the same page.");
        var sameDpi = Alike(films, film => film.Dpi);
        if (sameDpi == false)
            remarks.Add("The films differ in resolution: " + List(films, film => Say($"{film.File} {film.Dpi:0} dpi")) + ". Where a file says its resolution wrongly, its size is wrong too: output them all at one resolution.");
        if (films.Length > MostFilms)
            remarks.Add(Say($"Only the first {MostFilms} of {films.Length} films were held against each other."));
        var compared = sheets.Take(MostFilms).ToArray();
        var (register, said) = RegisterCheck.Of([.. compared.Select(sheet => sheet.Film)]);
        remarks.AddRange(said);
        var pairs = Pairs(compared);
        remarks.AddRange(pairs.Select(PairWords.Of));
        var fits = sheets.Where(sheet => sheet.Frame is not null).Select(sheet => FrameFit.Of(sheet.Film, sheet.Frame!)).ToArray();
        remarks.AddRange(fits.Select(fit => fit.Remark).OfType<string>().Distinct());
        return new FilmsTogether
        {
            SameSize = sameSize,
            SameDpi = sameDpi,
            Register = register,
            MirroredOrDuplicate = pairs,
            FitsFrame = fits.Length == 0 ? null : fits.All(fit => fit.Fits),
            Remarks = remarks,
        };
    }

    private static List<FilmPair> Pairs(JobSheet[] sheets)
    {
        var pairs = new List<FilmPair>();
        for (var i = 0; i < sheets.Length; i++)
        {
            for (var j = i + 1; j < sheets.Length; j++)
            {
                var (one, other) = (sheets[i], sheets[j]);

                // One film for two colours is meant so; and a single colour may lie on an underbase of its own image.
                if (!ReferenceEquals(one.Film, other.Film)
                    && FilmComparison.Of(one.Film, other.Film) is { } found
                    && (found.Turn != FilmTurn.None || one.IsUnderbase == other.IsUnderbase))
                {
                    pairs.Add(new FilmPair(one.Film.File, other.Film.File, found));
                }
            }
        }

        return pairs;
    }

    private static bool? Alike<T>(FilmMeasurement[] films, Func<FilmMeasurement, T> of) =>
        films.Length < 2 ? null : films.Select(of).Distinct().Count() == 1;

    private static string List(FilmMeasurement[] films, Func<FilmMeasurement, string> say) => string.Join("; ", films.Select(say));

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
