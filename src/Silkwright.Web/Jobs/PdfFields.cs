using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;

namespace Silkwright.Web.Jobs;

/// <summary>How the PDFs among uploaded films are looked at, as typed.</summary>
/// <param name="Page">Which page; empty: the first.</param>
/// <param name="Dpi">How finely it is drawn; empty: as films usually are output.</param>
public sealed record PdfFields(string Page = "", string Dpi = "")
{
    public static PdfFields Of(IFormCollection form) => new(form["pdfPage"].ToString().Trim(), form["pdfDpi"].ToString().Trim());

    /// <summary>What was typed; the usual after a fault.</summary>
    public FilmOptions Read(ProblemList problems)
    {
        var (page, dpi) = (1, (double?)null);
        if (Page.Length > 0 && !(int.TryParse(Page, NumberStyles.None, CultureInfo.InvariantCulture, out page) && page >= 1))
            problems.Add($"'{Page}' is no page.", "PDF page", "Write a whole number from 1.");
        if (Dpi.Length > 0)
        {
            if (double.TryParse(Dpi, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var read) && read >= FilmLimits.LeastDpi && read <= FilmLimits.MostDpi)
                dpi = read;
            else
                problems.Add($"'{Dpi}' is no resolution of a film.", "PDF resolution", string.Create(CultureInfo.InvariantCulture, $"Write pixels an inch, from {FilmLimits.LeastDpi:0} to {FilmLimits.MostDpi:0}, such as 2400."));
        }

        return new FilmOptions(dpi, Page: Math.Max(1, page));
    }

    /// <summary>Whether an upload is a PDF, by its first bytes and not by its name.</summary>
    public static async Task<bool> IsPdfAsync(IFormFile upload, CancellationToken cancel)
    {
        await using var content = upload.OpenReadStream();
        var start = new byte[5];
        return await content.ReadAtLeastAsync(start, start.Length, throwOnEndOfStream: false, cancel) == start.Length && start.AsSpan().SequenceEqual("%PDF-"u8);
    }
}
