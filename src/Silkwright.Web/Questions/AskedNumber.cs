using System.Globalization;

namespace Silkwright.Web.Questions;

/// <summary>A whole number in a page's address.</summary>
internal static class AskedNumber
{
    /// <summary>The number; none where the text is none, since links of ours never hold one that is not.</summary>
    public static int? Of(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
