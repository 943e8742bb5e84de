using System.Globalization;
using System.Text.Json;
using Silkwright.Estimates;

namespace Silkwright.Film.TestFilms;

/// <summary>Reads the shapes of a drawing.</summary>
internal sealed class ShapeReader(ProblemList problems)
{
    private const string Remedy = "See docs/engines/film.md, \"Drawings\".";
    private const int MostRepeats = 10_000;
    private static readonly string[] Kinds = ["line", "ring", "disc", "rect", "polygon", "path", "text", "register", "part"];
    private readonly Dictionary<string, IReadOnlyList<FilmShape>> parts = [];

    /// <summary>Keeps a named list of shapes that several films may use.</summary>
    public void AddPart(string name, JsonElement element, string where)
    {
        if (element.ValueKind != JsonValueKind.Array)
        {
            problems.Add("A part is a list of shapes.", where, Remedy);
            return;
        }

        parts[name] = [.. element.EnumerateArray().SelectMany((e, i) => Read(e, $"{where}, shape {i + 1}"))];
    }

    /// <summary>The shapes one entry stands for: one, or more where it is repeated or names a part.</summary>
    public IReadOnlyList<FilmShape> Read(JsonElement element, string where)
    {
        var fields = new JsonFields(element, where, problems);
        var kinds = Kinds.Where(fields.Has).ToList();
        if (kinds.Count != 1)
        {
            problems.Add("A shape names one kind.", where, $"Give one of {string.Join(", ", Kinds)}.");
            return [];
        }

        var drawn = Drawn(kinds[0], fields);
        var (line, clear, halftone) = (fields.Number("lineMm", required: false), fields.Flag("clear"), Halftone(fields.Object("halftone")));
        if (line is <= 0)
            problems.Add("lineMm is above 0.", where, Remedy);
        var turn = fields.Number("turn", required: false) ?? 0;
        var move = fields.Numbers("move", 2, required: false) ?? [0, 0];
        var repeat = fields.Numbers("repeat", 3, required: false) ?? [1, 0, 0];
        if (repeat[0] is < 1 or > MostRepeats)
            problems.Add($"repeat starts with a count from 1 to {MostRepeats}.", where, Remedy);
        fields.RefuseOthers(Remedy);
        return
        [
            .. Enumerable.Range(0, (int)Math.Clamp(repeat[0], 1, MostRepeats)).SelectMany(i => drawn.Select(s => s with
            {
                LineMm = s.LineMm ?? line,
                Clear = s.Clear || clear,
                Halftone = s.Halftone ?? halftone,
                Placed = (s.Placed.Degrees + turn, s.Placed.XMm + move[0] + (i * repeat[1]), s.Placed.YMm + move[1] + (i * repeat[2])),
            })),
        ];
    }

    private IReadOnlyList<FilmShape> Drawn(string kind, JsonFields fields)
    {
        switch (kind)
        {
            case "text":
                return Lettering(fields) is { } letters ? [new FilmShape { Lettering = letters }] : [];
            case "part":
                var name = fields.Text("part");
                if (name is not null && parts.TryGetValue(name, out var shapes))
                    return shapes;
                problems.Add($"There is no part {name}.", fields.Where, "Name one of parts, written above it.");
                return [];
            case "path":
                return fields.Text("path") is { } data && Readable(data, fields.Where) ? [new FilmShape { Outline = data }] : [];
            case "polygon":
                return fields.Numbers("polygon", 0) is { } points ? [new FilmShape { Outline = Polygon(points) }] : [];
            default:
                return fields.Numbers(kind, kind is "disc" or "ring" or "register" ? 3 : 4) is { } n
                    ? [new FilmShape { Outline = Outline(kind, n), LineMm = kind == "register" ? RegisterLineMm : null }]
                    : [];
        }
    }

    /// <summary>Line width of register marks. [mm] Common practice: about half a point, fine and yet held by a coarse mesh.</summary>
    private const double RegisterLineMm = 0.2;

    private bool Readable(string data, string where)
    {
        try
        {
            ShapeOutline.Parse(data).Dispose();
            return true;
        }
        catch (FormatException)
        {
            problems.Add("The path data cannot be read.", where, "Write it as SVG path data, in mm.");
            return false;
        }
    }

    private static FilmLettering? Lettering(JsonFields fields)
    {
        var (text, at, size) = (fields.Text("text"), fields.Numbers("at", 2), fields.Number("sizeMm"));
        var (light, radius) = (fields.Flag("light"), fields.Number("radiusMm", required: false));
        return text is null || at is null || size is null ? null : new FilmLettering(text, at[0], at[1], size.Value, !light, radius ?? 0);
    }

    private HalftoneFill? Halftone(JsonFields? fields)
    {
        if (fields is null)
            return null;
        var (ruling, angle, tone) = (fields.Number("lpi"), fields.Number("angle"), fields.Numbers("tone", 2));
        var radial = fields.Has("radial");
        var along = fields.Numbers(radial ? "radial" : "linear", 4);
        fields.RefuseOthers(Remedy);
        if (ruling is null || angle is null || tone is null || along is null)
            return null;
        if (ruling.Value <= 0 || tone.Any(t => t is < 0 or > 100))
            problems.Add("A halftone's lpi is above 0 and its tones are 0 to 100.", fields.Where, Remedy);
        if (radial ? along[2] == along[3] : along[0] == along[2] && along[1] == along[3])
            problems.Add("A halftone's run has no length.", fields.Where, "Let it start and end at different places.");
        return new HalftoneFill(ruling.Value, angle.Value, tone[0], tone[1], along, radial);
    }

    private static string Polygon(double[] p) =>
        "M" + string.Join("L", Enumerable.Range(0, p.Length / 2).Select(i => Say($"{p[2 * i]} {p[(2 * i) + 1]} "))) + "Z";

    private static string Outline(string kind, double[] n) => kind switch
    {
        "line" => Say($"M{n[0]} {n[1]}L{n[2]} {n[3]}"),
        "rect" => Say($"M{n[0]} {n[1]}h{n[2]}v{n[3]}h{-n[2]}Z"),
        "register" => Circle(n[0], n[1], n[2] * 0.6) + Say($"M{n[0] - n[2]} {n[1]}h{2 * n[2]}M{n[0]} {n[1] - n[2]}v{2 * n[2]}"),
        _ => Circle(n[0], n[1], n[2]),
    };

    private static string Circle(double x, double y, double r) => Say($"M{x - r} {y}a{r} {r} 0 1 0 {2 * r} 0a{r} {r} 0 1 0 {-2 * r} 0Z");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
