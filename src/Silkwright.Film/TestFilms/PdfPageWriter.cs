using System.Globalization;
using System.Text;

namespace Silkwright.Film.TestFilms;

/// <summary>Writes small PDF files by hand, a page for each content. ISO 32000-1 (2008), clause 7.5.</summary>
public static class PdfPageWriter
{
    /// <summary>A file of pages of one size.</summary>
    /// <param name="widthPoints">[1/72 in]</param>
    /// <param name="heightPoints">[1/72 in]</param>
    /// <param name="turned">Clockwise turn that each page asks for: 0, 90, 180 or 270. [degrees]</param>
    /// <param name="contents">What each page draws: operators of clause 8, counted from its lower left.</param>
    public static byte[] Make(double widthPoints, double heightPoints, int turned, params IReadOnlyList<string> contents)
    {
        ArgumentNullException.ThrowIfNull(contents);
        var kids = string.Join(' ', contents.Select((_, i) => Say($"{3 + (2 * i)} 0 R")));
        List<string> objects = ["<</Type/Catalog/Pages 2 0 R>>", Say($"<</Type/Pages/Kids[{kids}]/Count {contents.Count}>>")];
        foreach (var content in contents)
        {
            objects.Add(Say($"<</Type/Page/Parent 2 0 R/MediaBox[0 0 {widthPoints:0.###} {heightPoints:0.###}]/Rotate {turned}/Resources<<>>/Contents {objects.Count + 2} 0 R>>"));
            objects.Add(Say($"<</Length {content.Length}>>stream\n{content}\nendstream"));
        }

        var file = new StringBuilder("%PDF-1.4\n");
        var places = new List<int>();
        foreach (var (text, i) in objects.Select((text, i) => (text, i)))
        {
            places.Add(file.Length);
            _ = file.Append(Say($"{i + 1} 0 obj\n{text}\nendobj\n"));
        }

        var table = file.Length;
        _ = file.Append(Say($"xref\n0 {objects.Count + 1}\n0000000000 65535 f \n"));
        foreach (var place in places)
            _ = file.Append(Say($"{place:0000000000} 00000 n \n"));
        _ = file.Append(Say($"trailer<</Size {objects.Count + 1}/Root 1 0 R>>\nstartxref\n{table}\n%%EOF\n"));
        return Encoding.Latin1.GetBytes(file.ToString());
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
