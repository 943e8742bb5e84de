using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Film.Readers;

/// <summary>The faults a film file can have, each with its remedy.</summary>
internal static class FilmProblems
{
    private const string SaveAgain = "Save the film again as a 1-bit TIFF with CCITT G4 compression.";

    public static InputProblemException Unreadable(string name, Exception failure) => failure switch
    {
        FileNotFoundException or DirectoryNotFoundException =>
            One("There is no such file.", name, "Check the name and the folder."),
        _ => One("The file cannot be opened.", name, "Check that it is a file, that it may be read and that no other program holds it."),
    };

    public static InputProblemException NotAFilm(string name) =>
        One("The file is neither a TIFF nor a PNG nor a PDF.", name, "Give a 1-bit or 8-bit TIFF, a PNG or a PDF.");

    public static InputProblemException Damaged(string name, string how) =>
        One($"The file is damaged or cut short: {how}.", name, "Copy or export the film again.");

    public static InputProblemException Unsupported(string name, string what) =>
        One($"The film is of a kind that is not read: {what}.", name, SaveAgain);

    public static InputProblemException Size(string name, long width, long height) =>
        One(
            Say($"The header says {width} x {height} px, which no film has."),
            name,
            Say($"A side may be 1 to {FilmLimits.LongestSidePx} px and the whole at most {FilmLimits.MostPixels / 1_000_000} megapixels. ") + SaveAgain);

    public static InputProblemException TooMixed(string name) =>
        One(
            Say($"Image and gap change so often on this film that it takes more than {FilmLimits.MostKeptBytes / 1_000_000} MB."),
            name,
            "Output it at a lower resolution, or in two parts.");

    public static InputProblemException BadDpi(string name, double dpi) =>
        One(
            Say($"A resolution of {dpi:0.###} dpi is not a film's."),
            name,
            Say($"Give the true one with --dpi, from {FilmLimits.LeastDpi:0} to {FilmLimits.MostDpi:0}."));

    public static InputProblemException NoDpi(string name) =>
        One("The file does not say its resolution.", name, "Give its resolution, for example --dpi 1200, or save it with that.");

    public static InputProblemException NoPdfProgram(string name, string program) =>
        One(
            $"A PDF is drawn by the program {program}, which is not installed here.",
            name,
            "Install poppler's programs (on Debian and Ubuntu: apt install poppler-utils), or output the separation as a 1-bit TIFF.");

    public static InputProblemException PdfTooSlow(string name) =>
        One("Drawing the page takes too long.", name, "Give a lower resolution with --dpi, or output the separation as a 1-bit TIFF.");

    public static InputProblemException PdfSize(string name, double widthMm, double heightMm, double dpi) =>
        One(
            Say($"The page is {widthMm:0} x {heightMm:0} mm; at {dpi:0.###} dpi that is more than a film may have."),
            name,
            Say($"A side may be 1 to {FilmLimits.LongestSidePx} px and the whole at most {FilmLimits.MostPixels / 1_000_000} megapixels. Give a lower resolution with --dpi, or crop the page."));

    public static InputProblemException NoSuchPage(string name, int page, int pages) =>
        One(Say($"There is no page {page}: the file has {pages}."), name, pages == 1 ? "Leave --page out." : Say($"Give --page 1 to {pages}."));

    public static InputProblemException NoPages(string name, int page) =>
        One(Say($"Page {page} is asked for, and only a PDF's page can be chosen."), name, "Leave --page out, or export that page as a file of its own.");

    /// <summary>Checks a size before anything is allocated for it.</summary>
    public static void CheckSize(string name, long width, long height)
    {
        if (!FilmLimits.Takes(width, height))
            throw Size(name, width, height);
    }

    /// <summary>The resolution to use: the given one, else the file's.</summary>
    public static double Dpi(string name, double? given, double? inFile)
    {
        if (given is { } overruled)
            return overruled;
        if (inFile is not { } dpi)
            throw NoDpi(name);
        return dpi >= FilmLimits.LeastDpi && dpi <= FilmLimits.MostDpi ? dpi : throw BadDpi(name, dpi);
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static InputProblemException One(string what, string where, string remedy) => new(new Problem(what, where, remedy));
}
