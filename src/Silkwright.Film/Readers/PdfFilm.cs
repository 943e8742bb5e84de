using System.Globalization;
using Silkwright.Film.Measuring;

namespace Silkwright.Film.Readers;

/// <summary>A separation on a page of a PDF, drawn as greys by poppler's <c>pdftoppm</c> and streamed from it slice by slice.</summary>
internal sealed class PdfFilm : IFilmSource
{
    /// <summary>Resolution a page is drawn at when none is given. [1/in] Common practice: what films are output at. A page has a size of its own, so no width hangs on it.</summary>
    public const double UsualDpi = 1200;

    /// <summary>Pixels drawn at once: what the program holds in memory, a byte each. Our own choice.</summary>
    private const int SlicePixels = 64_000_000;

    private const double PointsPerInch = 72;

    /// <summary>Time to start and to read a page, and pixels drawn a second by a slow machine: longer takes only a page that never ends.</summary>
    private const double LeastSeconds = 10, SlowestPixelsPerSecond = 8e6;

    private readonly string path;
    private readonly string name;
    private readonly int page;
    private readonly bool clearPrints;
    private readonly string searchPath;

    private PdfFilm(string path, FilmHeader header, FilmOptions options, string searchPath)
    {
        this.path = path;
        this.searchPath = searchPath;
        name = Path.GetFileName(path);
        page = options.Page;
        Header = header;
        clearPrints = options.Polarity == FilmPolarity.Negative;
    }

    public FilmHeader Header { get; }

    /// <param name="path">The file.</param>
    /// <param name="options">What the file cannot say: the page, and how finely to draw it.</param>
    /// <param name="searchPath">Folders to look for the programs in; none: the system's.</param>
    /// <exception cref="Silkwright.Estimates.InputProblemException">Damaged, too large, or the programs are not installed.</exception>
    public static PdfFilm Open(string path, FilmOptions options, string? searchPath = null)
    {
        var (full, name) = (Path.GetFullPath(path), Path.GetFileName(path));
        searchPath ??= Environment.GetEnvironmentVariable("PATH") ?? "";
        var pdf = PdfPage.Read(full, name, options.Page, searchPath);
        var dpi = options.Dpi ?? UsualDpi;
        var (width, height) = (Pixels(pdf.WidthPoints, dpi), Pixels(pdf.HeightPoints, dpi));
        if (!FilmLimits.Takes(width, height))
            throw FilmProblems.PdfSize(name, pdf.WidthPoints * 25.4 / PointsPerInch, pdf.HeightPoints * 25.4 / PointsPerInch, dpi);
        var remarks = new List<string>
        {
            string.Create(CultureInfo.InvariantCulture, $"The page was drawn at {dpi:0.###} dpi{(options.Dpi is null ? ", as none was given" : "")}; everything darker than the middle was taken as black."),
        };
        if (pdf.Pages > 1)
            remarks.Add(string.Create(CultureInfo.InvariantCulture, $"The file has {pdf.Pages} pages; page {options.Page} was read."));
        return new PdfFilm(full, new FilmHeader(Path.GetFileName(full), (int)width, (int)height, dpi, remarks), options, searchPath);
    }

    public void ReadRows(int first, int count, RowSink sink, CancellationToken cancel)
    {
        var rows = Math.Max(1, SlicePixels / Header.WidthPx);
        for (var top = first; top < first + count; top += rows)
            ReadSlice(top, Math.Min(rows, first + count - top), sink, cancel);
    }

    public void Dispose()
    {
        // Each call of ReadRows runs the program and ends it itself.
    }

    private static double Pixels(double points, double dpi) => Math.Ceiling((points * dpi / PointsPerInch) - 0.001);

    private void ReadSlice(int top, int rows, RowSink sink, CancellationToken cancel)
    {
        var most = TimeSpan.FromSeconds(LeastSeconds + ((double)rows * Header.WidthPx / SlowestPixelsPerSecond));
        PdfProgram.Run(
            "pdftoppm",
            [
                "-f", Say(page), "-l", Say(page), "-r", Say(Header.Dpi), "-gray", "-aa", "no", "-aaVector", "no", "-cropbox",
                "-x", "0", "-y", Say(top), "-W", Say(Header.WidthPx), "-H", Say(rows), path,
            ],
            name,
            most,
            searchPath,
            output => Take(output, top, rows, sink, cancel),
            cancel);
    }

    /// <summary>Reads a grey picture of 8 bits: "P5", width, height, 255, then a byte a pixel (netpbm's PGM).</summary>
    private void Take(Stream output, int top, int rows, RowSink sink, CancellationToken cancel)
    {
        using var picture = new BufferedStream(output, 1 << 16);
        if (Word(picture) != "P5" || Word(picture) != Say(Header.WidthPx) || Word(picture) != Say(rows) || Word(picture) != "255")
            throw new InvalidDataException("Not the picture that was asked for.");
        var greys = new byte[Header.WidthPx];
        var row = new ulong[(Header.WidthPx + 63) >> 6];
        var lastMask = (Header.WidthPx & 63) == 0 ? ulong.MaxValue : ~(ulong.MaxValue >> (Header.WidthPx & 63));
        for (var y = 0; y < rows; y++)
        {
            cancel.ThrowIfCancellationRequested();
            picture.ReadExactly(greys);
            RowPacking.Greys(greys, row, clearPrints, lastMask);
            sink(top + y, row);
        }
    }

    private static string Word(Stream picture)
    {
        Span<char> word = stackalloc char[12];
        for (var length = 0; length < word.Length; length++)
        {
            var one = picture.ReadByte();
            if (one < 0)
                throw new EndOfStreamException();
            if (char.IsWhiteSpace((char)one))
                return new string(word[..length]);
            word[length] = (char)one;
        }

        throw new InvalidDataException("Not a picture's head.");
    }

    private static string Say(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
