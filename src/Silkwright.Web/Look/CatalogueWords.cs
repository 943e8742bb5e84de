using Silkwright.Catalogue;
using Silkwright.Estimates;

namespace Silkwright.Web.Look;

/// <summary>What a catalogue's sheet says, in words.</summary>
public static class CatalogueWords
{
    /// <summary>A line's property and circumstance: "price of a container at 900 g".</summary>
    public static string Of(SheetLine line) => line.At is { } at
        ? $"{line.Property.Meaning} at {Figures.Plain(at)} {line.Property.AtUnit}"
        : line.Property.Meaning;

    /// <summary>What a source says, with its unit.</summary>
    public static string Value(CatalogueEntry entry) => entry.Value.Number is { } number
        ? $"{Figures.Exact(number)} {Unit(entry.Property)}".TrimEnd()
        : Spoken(entry.Value.Word!);

    /// <summary>The unit people see: a price has its shop's own.</summary>
    public static string Unit(CatalogueProperty property) => property == CatalogueProperties.Price ? "" : property.Unit;

    private static string Spoken(string word) => word switch
    {
        "dualCure" => "dual-cure",
        "capillaryFilm" => "capillary film",
        _ => word,
    };
}
