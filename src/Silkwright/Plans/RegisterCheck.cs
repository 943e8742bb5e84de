using System.Globalization;
using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>Lays the films of a job over each other by their register marks and says what does not agree.</summary>
internal static class RegisterCheck
{
    /// <summary>What register marks may lie apart. [mm] Common practice, no source.</summary>
    private const double MostApartMm = 0.1;

    /// <summary>So many marks that agree are no chance, however many do not: the rest are letters. Our own choice.</summary>
    private const int Enough = 3;

    public static (IReadOnlyList<RegisteredFilm> Register, IReadOnlyList<string> Remarks) Of(IReadOnlyList<FilmMeasurement> films)
    {
        var looked = films.Where(film => film.Layout is not null).ToArray();
        if (looked.Length < 2)
            return ([], []);
        var marked = looked.Where(film => film.Layout!.Marks.Count > 0).ToArray();
        var remarks = new List<string>();
        var bare = looked.Except(marked).Select(film => film.File).ToArray();
        if (bare.Length > 0)
            remarks.Add($"No register marks were found on {string.Join(", ", bare)}. Marks are crosses or targets near the edges, 3 to 20 mm large, that stand clear of everything else: put the same on every film of the job.");
        var register = new List<RegisteredFilm>();
        foreach (var film in marked.Skip(1))
        {
            if (RegisterFit.Of(marked[0].Layout!.Marks, film.Layout!.Marks) is not { } offset || offset.Marks < Math.Min(Enough, Math.Min(marked[0].Layout!.Marks.Count, film.Layout.Marks.Count) / 2.0))
            {
                remarks.Add($"The register marks of {film.File} and {marked[0].File} stand in different places: the films cannot be laid over each other by them. Output both with the same marks.");
                continue;
            }

            register.Add(new RegisteredFilm(film.File, marked[0].File, offset));
            if (offset.MostMm > MostApartMm)
                remarks.Add(Words(film.File, marked[0].File, offset));
        }

        return (register, remarks);
    }

    private static string Words(string film, string against, RegisterOffset offset)
    {
        var shifted = Math.Max(Math.Abs(offset.XMm), Math.Abs(offset.YMm)) > MostApartMm / 2;
        var parts = new List<string>();
        if (shifted)
            parts.Add($"lie {Way(offset.XMm, "to the right", "to the left")} and {Way(offset.YMm, "below", "above")}");
        if (Math.Abs(offset.TurnDegrees) >= 0.005)
            parts.Add(Say($"are turned by {Math.Abs(offset.TurnDegrees):0.00} degrees {(offset.TurnDegrees > 0 ? "counter-clockwise" : "clockwise")}"));
        if (Math.Abs(offset.StretchPercent) >= 0.01)
            parts.Add(Say($"stand {Math.Abs(offset.StretchPercent):0.00} % {(offset.StretchPercent > 0 ? "farther apart" : "closer together")}"));
        if (parts.Count == 0)
            parts.Add("lie unevenly");
        if (offset.Marks == 1)
            return $"The one mark that {film} and {against} have in common lies {Say($"{offset.MostMm:0.00}")} mm apart: {Way(offset.XMm, "to the right", "to the left")} and {Way(offset.YMm, "below", "above")} on {film}. One mark, which may be artwork, tells no turn and no stretch: put three or more on every film of the job.";
        var remedy = parts.Count == 1 && shifted
            ? "Screens set by their marks take this out; screens set by pins or by the films' corners print it: output the film again from the same corner."
            : "No setting of the screens takes a turn or a stretch out wholly: output the film again, at the others' size and squarely.";
        return $"Against those of {against}, the register marks of {film} {string.Join(", ", parts)} ({Say($"{offset.Marks}")} marks, at most {Say($"{offset.MostMm:0.00}")} mm apart). {remedy}";
    }

    private static string Way(double mm, string more, string less) => Say($"{Math.Abs(mm):0.00} mm {(mm >= 0 ? more : less)}");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
