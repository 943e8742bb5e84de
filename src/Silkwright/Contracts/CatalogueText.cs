using System.Globalization;
using Silkwright.Catalogue;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>A catalogue's properties and values the way people type them.</summary>
public static class CatalogueText
{
    private const string AtWord = " at ";

    /// <summary>A property as a catalogue writes it, with its circumstance: <c>potLifeDays at 37C</c>.</summary>
    public static string Of(CatalogueProperty property, double? at) => at is { } known && known != property.UsualAt
        ? string.Create(CultureInfo.InvariantCulture, $"{property.Name}{AtWord}{Math.Round(known, 1)}{KindOf(property.AtUnit).KeptIn}")
        : property.Name;

    /// <summary>The same to the last digit, so that it is read back as it was.</summary>
    internal static string Exactly(CatalogueProperty property, double? at) => at is { } known && known != property.UsualAt
        ? string.Create(CultureInfo.InvariantCulture, $"{property.Name}{AtWord}{known:R}{KindOf(property.AtUnit).KeptIn}")
        : property.Name;

    /// <summary>What a property takes, in words.</summary>
    public static string Taken(CatalogueProperty property)
    {
        if (property.Words is { } words)
            return string.Join(" | ", words);
        var kind = KindOf(property.Unit);
        var unit = property.Unit.Length == 0 ? "" : $" in {property.Unit}";
        var written = kind.Units.Count == 0 ? "" : $"; or with a unit, as in {kind.Example}";
        return $"a number{unit}, {Figures.AsGiven(property.Least)} to {Figures.AsGiven(property.Most)}{written}";
    }

    /// <summary>Reads a property with its circumstance; none when a fault was added.</summary>
    internal static (CatalogueProperty Property, double? At)? ReadProperty(string text, string where, ProblemList problems)
    {
        var cut = text.IndexOf(AtWord, StringComparison.OrdinalIgnoreCase);
        var name = (cut < 0 ? text : text[..cut]).Trim();
        if (CatalogueProperties.All.FirstOrDefault(known => string.Equals(known.Name, name, StringComparison.OrdinalIgnoreCase)) is not { } property)
        {
            problems.Add($"'{NearName.Shown(name)}' is no property of a catalogue.", where, $"Write one of {string.Join(", ", CatalogueProperties.All.Select(known => known.Name))}.");
            return null;
        }

        if (property.AtUnit.Length == 0)
        {
            if (cut >= 0)
                problems.Add($"{property.Name} is told without a circumstance.", where, $"Write {property.Name} alone.");
            return cut >= 0 ? null : (property, null);
        }

        var kind = KindOf(property.AtUnit);
        if (cut < 0)
        {
            if (property.UsualAt is null)
                problems.Add($"{property.Name} is told at {kind.Name}.", where, $"Write {property.Name}{AtWord}{kind.Example}.");
            return property.UsualAt is null ? null : (property, property.UsualAt);
        }

        if (QuantityText.Read(text[(cut + AtWord.Length)..], kind, where, problems) is not { } at)
            return null;
        if (!InRange(at, property.LeastAt, property.MostAt))
        {
            problems.Add($"{Figures.AsGiven(at)} {property.AtUnit} is outside {Figures.AsGiven(property.LeastAt)} to {Figures.AsGiven(property.MostAt)} {property.AtUnit}.", where, "Check the number and its unit.");
            return null;
        }

        // 70 °F is 21.1 °C and means the same room.
        return (property, property.UsualAt is { } usual && Math.Abs(at - usual) < SameCircumstance ? usual : at);
    }

    /// <summary>Reads what a source says; none when a fault was added.</summary>
    internal static CatalogueValue? ReadValue(string text, CatalogueProperty property, string where, ProblemList problems)
    {
        if (property.Words is { } words)
        {
            if (words.FirstOrDefault(word => Plain(word) == Plain(text)) is { } known)
                return CatalogueValue.Of(known);
            problems.Add($"'{NearName.Shown(text)}' is no answer to {property.Name}.", where, $"Write one of {string.Join(", ", words)}.");
            return null;
        }

        // A number alone is in the unit of the property's name.
        var number = double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var bare) && double.IsFinite(bare)
            ? bare
            : QuantityText.Read(text, KindOf(property.Unit), where, problems);
        if (number is not { } read)
            return null;
        if (InRange(read, property.Least, property.Most))
            return CatalogueValue.Of(read);
        problems.Add(
            $"{Figures.AsGiven(read)} is outside {Figures.AsGiven(property.Least)} to {Figures.AsGiven(property.Most)}{(property.Unit.Length > 0 ? $" {property.Unit}" : "")}.",
            where, $"{property.Name} takes {Taken(property)}.");
        return null;
    }

    /// <summary>Circumstances closer than this are the same. [°C]</summary>
    private const double SameCircumstance = 0.5;

    private static QuantityKind KindOf(string unit) => unit switch
    {
        "%" => QuantityKind.Share,
        "Pa·s" => QuantityKind.Viscosity,
        "g/cm³" => QuantityKind.Density,
        "nm" => QuantityKind.Wavelength,
        "µm" => QuantityKind.Thickness,
        "mJ/cm²" => QuantityKind.Dose,
        "d" => QuantityKind.Days,
        "g" => QuantityKind.Mass,
        "°C" => QuantityKind.Temperature,
        _ => QuantityKind.Number,
    };

    private static bool InRange(double value, double least, double most) => value >= least && value <= most;

    private static string Plain(string word) => string.Concat(word.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
