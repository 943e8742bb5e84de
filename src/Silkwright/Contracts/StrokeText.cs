using Silkwright.Coating;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>
/// Strokes in order as text: <c>P</c> print side, <c>S</c> squeegee side, <c>|</c> dried between, <c>p</c> and <c>s</c> a
/// scrape with an empty edge. Spaces do not count.
/// </summary>
public static class StrokeText
{
    public static IReadOnlyList<Stroke>? TryRead(string text, string where, ProblemList problems)
    {
        var strokes = new List<Stroke>();
        var afterDrying = false;
        foreach (var letter in text)
        {
            if (letter == '|')
            {
                afterDrying = strokes.Count > 0;
                continue;
            }

            if (char.IsWhiteSpace(letter))
                continue;
            if (letter is not ('P' or 'S' or 'p' or 's'))
            {
                problems.Add(
                    $"'{letter}' is not a stroke.",
                    where,
                    "Write P (print side), S (squeegee side), p or s (scrape with an empty edge) and | (dried between).");
                return null;
            }

            strokes.Add(new Stroke(letter is 'P' or 'p' ? StrokeSide.Print : StrokeSide.Squeegee, char.IsLower(letter), afterDrying));
            afterDrying = false;
        }

        return strokes;
    }

    public static string Write(IEnumerable<Stroke> strokes) => string.Join(' ', strokes.Select(stroke =>
    {
        var letter = stroke.Side == StrokeSide.Print ? "P" : "S";
        return (stroke.AfterDrying ? "| " : "") + (stroke.Scrape ? letter.ToLowerInvariant() : letter);
    }));
}
