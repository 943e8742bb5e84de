using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Catalogue;

/// <summary>A catalogue's sheet as the emulsion that plans and comparisons reckon with.</summary>
public static class CatalogueEmulsion
{
    private static readonly (InkKind Ink, CatalogueProperty Property)[] Inks =
    [
        (InkKind.Plastisol, CatalogueProperties.ToPlastisol),
        (InkKind.WaterBased, CatalogueProperties.ToWaterBased),
        (InkKind.Discharge, CatalogueProperties.ToDischarge),
        (InkKind.Solvent, CatalogueProperties.ToSolvent),
        (InkKind.Uv, CatalogueProperties.ToUv),
    ];

    /// <summary>The values used, each with its ground; none while nobody has told the family, without which nothing can be reckoned.</summary>
    /// <remarks>What the sheet leaves open, the family answers, and says so: <see cref="FamilyValues"/>.</remarks>
    public static StencilEmulsion? Of(CatalogueSheet sheet)
    {
        if (sheet.Family is not { } family)
            return null;
        var price = Cheapest(sheet);
        var usual = new GivenGrounds();
        return new StencilEmulsion
        {
            Id = sheet.Emulsion,
            Family = family,
            Resistances = Resistances(sheet),
            SolidsPercent = Number(CatalogueProperties.Solids),
            PotLifeDays = Number(CatalogueProperties.PotLife),
            ShelfLifeMonths = Number(CatalogueProperties.ShelfLife),
            RelativeExposure = Number(CatalogueProperties.RelativeExposure),
            HumidityResistant = YesNo(CatalogueProperties.HumidityResistant),
            SeeThrough = YesNo(CatalogueProperties.SeeThrough),
            Price = price is null ? null : PriceOf(price),
            FilmThicknessUm = Number(CatalogueProperties.FilmThickness),
            PenetrationDepthUm = Number(CatalogueProperties.PenetrationDepth),
            CriticalDoseMjPerCm2 = Number(CatalogueProperties.CriticalDose),
            Grounds = new GivenGrounds
            {
                Solids = GroundOf(CatalogueProperties.Solids) ?? usual.Solids,
                PotLife = GroundOf(CatalogueProperties.PotLife) ?? usual.PotLife,
                ShelfLife = GroundOf(CatalogueProperties.ShelfLife) ?? usual.ShelfLife,
                RelativeExposure = GroundOf(CatalogueProperties.RelativeExposure) ?? usual.RelativeExposure,
                FilmThickness = GroundOf(CatalogueProperties.FilmThickness) ?? usual.FilmThickness,
                PenetrationDepth = GroundOf(CatalogueProperties.PenetrationDepth) ?? usual.PenetrationDepth,
                Price = price?.Used.Ground ?? usual.Price,
            },
        };

        SheetLine? Line(CatalogueProperty property) => sheet.Line(property, property.UsualAt);
        double? Number(CatalogueProperty property) => Line(property)?.Used.Value.Number;
        Ground? GroundOf(CatalogueProperty property) => Line(property)?.Used.Ground;
        bool? YesNo(CatalogueProperty property) => Line(property)?.Used.Value.Word is { } word ? word == "yes" : null;
    }

    private static Dictionary<InkKind, GivenResistance>? Resistances(CatalogueSheet sheet)
    {
        var graded = Inks
            .Select(pair => (pair.Ink, Line: sheet.Line(pair.Property)))
            .Where(pair => pair.Line is not null)
            .ToDictionary(
                pair => pair.Ink,
                pair => new GivenResistance(Enum.Parse<ResistanceGrade>(pair.Line!.Used.Value.Word!, ignoreCase: true), pair.Line.Used.Ground));
        return graded.Count == 0 ? null : graded;
    }

    /// <summary>The container in which a kilogram costs least.</summary>
    private static SheetLine? Cheapest(CatalogueSheet sheet) =>
        sheet.Lines.Where(line => line.Property == CatalogueProperties.Price).MinBy(line => PriceOf(line).CostPerKg);

    private static ContainerPrice PriceOf(SheetLine line) => new(line.At!.Value, line.Used.Value.Number!.Value);
}
