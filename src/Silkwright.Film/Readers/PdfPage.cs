using System.Globalization;
using System.Text;

namespace Silkwright.Film.Readers;

/// <summary>A page of a PDF as <c>pdfinfo</c> tells it.</summary>
/// <param name="WidthPoints">As it is shown, turned where the file says so. [1/72 in]</param>
/// <param name="HeightPoints">[1/72 in]</param>
/// <param name="Pages">Pages of the file.</param>
internal sealed record PdfPage(double WidthPoints, double HeightPoints, int Pages)
{
    private const int MostText = 1 << 16;

    private static readonly TimeSpan Most = TimeSpan.FromSeconds(10);

    /// <exception cref="Silkwright.Estimates.InputProblemException">It cannot be read, has no such page, or the program is not installed.</exception>
    public static PdfPage Read(string path, string name, int page, string searchPath)
    {
        // Asked for a page that is not there, the program only fails.
        if (page > 1 && Read(path, name, 1, searchPath).Pages is var last && page > last)
            throw FilmProblems.NoSuchPage(name, page, last);
        var number = page.ToString(CultureInfo.InvariantCulture);
        var text = "";
        PdfProgram.Run("pdfinfo", ["-f", number, "-l", number, path], name, Most, searchPath, output => text = Text(output), CancellationToken.None);

        // The file's own title comes before these lines and may say anything, so the last of a kind holds.
        var (width, height, pages, turned) = (0.0, 0.0, 0, false);
        foreach (var line in text.Split('\n'))
        {
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words is ["Pages:", var count])
                _ = int.TryParse(count, CultureInfo.InvariantCulture, out pages);
            else if (words is ["Page", _, "size:", var w, "x", var h, "pts", ..] && Number(w) is { } x && Number(h) is { } y)
                (width, height) = (x, y);
            else if (words is ["Page", _, "rot:", var angle])
                turned = angle is "90" or "270";
        }

        if (!(width > 0 && height > 0) || pages < 1)
            throw FilmProblems.Damaged(name, "its page has no size");
        return turned ? new PdfPage(height, width, pages) : new PdfPage(width, height, pages);
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;

    private static string Text(Stream output)
    {
        var bytes = new byte[MostText];
        var got = output.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        if (got == bytes.Length)
            throw new InvalidDataException("The program says more than a page is worth.");
        return Encoding.UTF8.GetString(bytes, 0, got);
    }
}
