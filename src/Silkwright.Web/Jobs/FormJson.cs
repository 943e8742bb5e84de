using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Estimates;

namespace Silkwright.Web.Jobs;

/// <summary>Typed fields into a document: what is empty is left out, what is not a number is told.</summary>
internal static class FormJson
{
    public static void AddText(JsonObject document, string name, string text)
    {
        if (text.Length > 0)
            document[name] = text;
    }

    public static void AddNumber(JsonObject document, string name, string text, string where, ProblemList problems)
    {
        if (text.Length == 0)
            return;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var number))
            document[name] = number == Math.Floor(number) && Math.Abs(number) < 1e15 ? JsonValue.Create((long)number) : JsonValue.Create(number);
        else
            problems.Add($"'{text}' is not a number.", where, "Write digits with a point for decimals, such as 12.5.");
    }
}
