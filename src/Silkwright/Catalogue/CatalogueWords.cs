using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Catalogue;

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

    /// <summary>Who says it and when: "invented sheet, edition 3, 2025-11-03".</summary>
    public static string Who(CatalogueEntry entry) => $"{entry.Source}, {entry.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "undated"}";

    /// <summary>What changes of a line, without the emulsion's name.</summary>
    public static string Of(LineChange change) => change switch
    {
        { Before: null } => $"{Of(change.Line)}: {Said(change.Line)} is told now",
        { After: null } => $"{Of(change.Line)}: {Said(change.Line)} is told no more",
        { OnlyOthers: true } => $"{Of(change.Line)}: still {Value(change.Line.Used)}, with {Sources(change.After!)} beside it where there were {change.Before!.Others.Count}",
        _ => $"{Of(change.Line)}: {Said(change.Before!)} becomes {Said(change.After!)}",
    };

    private static string Said(SheetLine line) => $"{Value(line.Used)} ({Who(line.Used)})";

    private static string Sources(SheetLine line) => line.Others.Count == 1 ? "1 source" : $"{line.Others.Count} sources";

    /// <summary>The unit people see: a price has its shop's own.</summary>
    public static string Unit(CatalogueProperty property) => property == CatalogueProperties.Price ? "" : property.Unit;

    private static string Spoken(string word) => word switch
    {
        "dualCure" => "dual-cure",
        "capillaryFilm" => "capillary film",
        _ => word,
    };
}
