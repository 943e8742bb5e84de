using Silkwright.Catalogue;

namespace Silkwright.Contracts;

/// <summary>A catalogue to fill in: every property once, with what it means and takes. Read back unfilled, it says nothing.</summary>
public static class CatalogueTemplate
{
    /// <summary>Example circumstances beside the usual one: a pot life in a hot room.</summary>
    private const double HotRoomCelsius = 30;
    private const double ContainerGrams = 900;

    /// <summary>The text, separated by commas.</summary>
    public static string Text { get; } = string.Concat(Lines().Select(line => $"{line}\n"));

    private static IEnumerable<string> Lines()
    {
        yield return string.Join(',', [.. CatalogueReader.Columns, "meaning", "takes"]);
        foreach (var property in CatalogueProperties.All)
        {
            yield return Line(property, property.UsualAt ?? (property.AtUnit == "g" ? ContainerGrams : null));
            if (property.UsualAt is not null)
                yield return Line(property, HotRoomCelsius);
        }
    }

    private static string Line(CatalogueProperty property, double? at) =>
        $",{CatalogueText.Of(property, at)},,,,,{property.Meaning},\"{CatalogueText.Taken(property)}\"";
}
