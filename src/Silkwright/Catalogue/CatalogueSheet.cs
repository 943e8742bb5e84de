using Silkwright.Emulsion;

namespace Silkwright.Catalogue;

/// <summary>All that is known of one emulsion, and what nobody knows.</summary>
public sealed record CatalogueSheet
{
    public required string Emulsion { get; init; }

    /// <summary>None while nobody has told it.</summary>
    public EmulsionFamily? Family { get; init; }

    /// <summary>What is known, in the order of <see cref="CatalogueProperties.All"/>.</summary>
    public required IReadOnlyList<SheetLine> Lines { get; init; }

    /// <summary>What nobody has told, though it can be asked of such an emulsion: each a question to measure.</summary>
    public required IReadOnlyList<CatalogueProperty> Questions { get; init; }

    /// <summary>The line of a property; none where nobody has told it.</summary>
    /// <param name="property">Which.</param>
    /// <param name="at">The circumstance, where the property has one.</param>
    public SheetLine? Line(CatalogueProperty property, double? at = null) =>
        Lines.FirstOrDefault(line => line.Property == property && (at is null || line.At == at));

    /// <param name="emulsion">Its name.</param>
    /// <param name="entries">All entries of this emulsion.</param>
    internal static CatalogueSheet Of(string emulsion, IReadOnlyCollection<CatalogueEntry> entries)
    {
        SheetLine[] lines =
        [
            .. from property in CatalogueProperties.All
               from told in entries.Where(entry => entry.Property == property).GroupBy(entry => entry.At).OrderBy(at => at.Key)
               select SheetLine.Of(told),
        ];
        EmulsionFamily? family = lines.FirstOrDefault(line => line.Property == CatalogueProperties.Family) is { } line
            ? Enum.Parse<EmulsionFamily>(line.Used.Value.Word!, ignoreCase: true)
            : null;
        return new CatalogueSheet
        {
            Emulsion = emulsion,
            Family = family,
            Lines = lines,
            Questions =
            [
                .. CatalogueProperties.All.Where(property => property.IsAskedOf(family)
                    && !lines.Any(known => known.Property == property && (property.UsualAt is null || known.At == property.UsualAt))),
            ],
        };
    }
}
