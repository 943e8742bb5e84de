using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;

namespace Silkwright.Web.Jobs;

/// <summary>What the files of uploaded films cannot say, as typed.</summary>
/// <param name="PdfPage">Which page of the PDFs among them; empty: the first.</param>
/// <param name="PdfDpi">How finely that is drawn; empty: as films usually are output.</param>
/// <param name="Dpi">Resolution of the others; empty: what each says.</param>
public sealed record FilmFields(string PdfPage = "", string PdfDpi = "", string Dpi = "")
{
    public static FilmFields Of(IFormCollection form) => new(Text(form, "pdfPage"), Text(form, "pdfDpi"), Text(form, "dpi"));

    /// <summary>What was typed, for PDFs and for other films; the usual after a fault.</summary>
    public (FilmOptions Pdf, FilmOptions Other) Read(ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        var page = 1;
        if (PdfPage.Length > 0 && !(int.TryParse(PdfPage, NumberStyles.None, CultureInfo.InvariantCulture, out page) && page >= 1))
            problems.Add($"'{PdfPage}' is no page.", "PDF page", "Write a whole number from 1.");
        return (new FilmOptions(Resolution(PdfDpi, "PDF resolution", problems), Page: Math.Max(1, page)), new FilmOptions(Resolution(Dpi, "resolution", problems)));
    }

    /// <summary>Whether an upload is a PDF, by its first bytes and not by its name.</summary>
    public static async Task<bool> IsPdfAsync(IFormFile upload, CancellationToken cancel)
    {
        await using var content = upload.OpenReadStream();
        var start = new byte[5];
        return await content.ReadAtLeastAsync(start, start.Length, throwOnEndOfStream: false, cancel) == start.Length && start.AsSpan().SequenceEqual("%PDF-"u8);
    }

    private static string Text(IFormCollection form, string name) => form[name].ToString().Trim();

    private static double? Resolution(string text, string where, ProblemList problems)
    {
        if (text.Length == 0)
            return null;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var dpi) && dpi >= FilmLimits.LeastDpi && dpi <= FilmLimits.MostDpi)
            return dpi;
        problems.Add($"'{text}' is no resolution of a film.", where, string.Create(CultureInfo.InvariantCulture, $"Write pixels an inch, from {FilmLimits.LeastDpi:0} to {FilmLimits.MostDpi:0}, such as 2400."));
        return null;
    }
}
