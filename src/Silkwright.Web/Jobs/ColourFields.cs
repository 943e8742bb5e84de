using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Web.Jobs;

/// <summary>One colour as typed into the form.</summary>
public sealed record ColourFields
{
    public string Name { get; init; } = "";

    public string Ink { get; init; } = "plastisol";

    public string Role { get; init; } = "colour";

    public string Film { get; init; } = "";

    public string Kind { get; init; } = "";

    /// <summary>With unit: 0.3mm, 12mil.</summary>
    public string Line { get; init; } = "";

    public string Gap { get; init; } = "";

    public string Ruling { get; init; } = "";

    public string Coverage { get; init; } = "";

    public string Impressions { get; init; } = "1";

    /// <summary>Nothing says that there is such a colour.</summary>
    public bool IsBlank => Name.Length == 0 && Film.Length == 0 && Kind.Length == 0 && Line.Length == 0 && Ruling.Length == 0 && Coverage.Length == 0;

    public static ColourFields Of(JobDocumentColour colour) => new()
    {
        Name = colour.Name,
        Ink = Names.Of(colour.Ink),
        Role = Names.Of(colour.Role),
        Film = colour.Film ?? "",
        Kind = colour.Kind is { } kind ? Names.Of(kind) : "",
        Line = Um(colour.Needs?.FinestLineUm),
        Gap = Um(colour.Needs?.FinestGapUm),
        Ruling = Number(colour.Needs?.RulingLpi),
        Coverage = Number(colour.Needs?.CoveragePercent),
        Impressions = colour.ImpressionsPerGarment.ToString(CultureInfo.InvariantCulture),
    };

    /// <summary>A colour for an uploaded film, named and placed by what its file is called.</summary>
    public static ColourFields ForFilm(string file, string ink)
    {
        var bare = Path.GetFileNameWithoutExtension(file).Replace('_', ' ').Replace('-', ' ').Trim();
        var role = bare.Contains("base", StringComparison.OrdinalIgnoreCase) ? "underbase"
            : bare.Contains("highlight", StringComparison.OrdinalIgnoreCase) ? "highlight" : "colour";
        return new ColourFields { Name = bare.Length == 0 ? file : char.ToUpperInvariant(bare[0]) + bare[1..], Film = file, Ink = ink, Role = role };
    }

    public static ColourFields Of(IFormCollection form, int index) => new()
    {
        Name = Text(form, index, "name"),
        Ink = Text(form, index, "ink"),
        Role = Text(form, index, "role"),
        Film = Text(form, index, "film"),
        Kind = Text(form, index, "kind"),
        Line = Text(form, index, "line"),
        Gap = Text(form, index, "gap"),
        Ruling = Text(form, index, "ruling"),
        Coverage = Text(form, index, "coverage"),
        Impressions = Text(form, index, "impressions"),
    };

    public JsonObject ToDocument(string where, ProblemList problems)
    {
        var needs = new JsonObject();
        AddLength(needs, "finestLineUm", Line, $"{where}, finest line", problems);
        AddLength(needs, "finestGapUm", Gap, $"{where}, finest gap", problems);
        FormJson.AddNumber(needs, "rulingLpi", Ruling, $"{where}, ruling", problems);
        FormJson.AddNumber(needs, "coveragePercent", Coverage.TrimEnd('%', ' '), $"{where}, share that prints", problems);
        var colour = new JsonObject();
        FormJson.AddText(colour, "name", Name);
        FormJson.AddText(colour, "ink", Ink);
        FormJson.AddText(colour, "role", Role);
        FormJson.AddText(colour, "film", Film);
        FormJson.AddText(colour, "kind", Kind);
        FormJson.AddNumber(colour, "impressionsPerGarment", Impressions, $"{where}, strokes a garment", problems);
        if (needs.Count > 0)
            colour["needs"] = needs;
        return colour;
    }

    private static void AddLength(JsonObject needs, string name, string text, string where, ProblemList problems)
    {
        if (text.Length > 0 && QuantityText.Read(text, QuantityKind.Thickness, where, problems) is { } um)
            needs[name] = um;
    }

    private static string Text(IFormCollection form, int index, string field) => form[$"c{index}.{field}"].ToString().Trim();

    private static string Um(double? um) => um is { } known ? Number(known) + "um" : "";

    private static string Number(double? number) => number?.ToString("0.##", CultureInfo.InvariantCulture) ?? "";
}
