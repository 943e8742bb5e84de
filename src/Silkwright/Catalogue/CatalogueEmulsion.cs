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
    public static StencilEmulsion? Of(CatalogueSheet sheet) => sheet.Family is { } family
        ? Complete(new StencilEmulsion { Id = sheet.Emulsion, Family = family }, sheet).Emulsion
        : null;

    /// <summary>What a shop leaves open of its emulsion, filled from the sheet; every figure of its own stands.</summary>
    /// <param name="own">As the shop describes it. Its list of inks is an answer on every ink, and its working curve is one of two figures: neither is filled in part.</param>
    /// <param name="sheet">Of the same emulsion.</param>
    /// <returns>The emulsion, and the lines taken; nothing is taken where the sheet tells another family.</returns>
    public static (StencilEmulsion Emulsion, IReadOnlyList<SheetLine> Taken) Complete(StencilEmulsion own, CatalogueSheet sheet)
    {
        if (sheet.Family is { } family && family != own.Family)
            return (own, []);
        var taken = new List<SheetLine>();
        var grounds = own.Grounds;
        var curve = own.PenetrationDepthUm ?? own.CriticalDoseMjPerCm2;
        var banded = own.SensitiveFromNm is not null || own.SensitiveToNm is not null;
        var completed = own with
        {
            Resistances = own.Resists is null ? Resistances() : own.Resistances,
            SolidsPercent = own.SolidsPercent ?? Number(CatalogueProperties.Solids, ground => grounds = grounds with { Solids = ground }),
            PotLifeDays = own.PotLifeDays ?? Number(CatalogueProperties.PotLife, ground => grounds = grounds with { PotLife = ground }),
            ShelfLifeMonths = own.ShelfLifeMonths ?? Number(CatalogueProperties.ShelfLife, ground => grounds = grounds with { ShelfLife = ground }),
            RelativeExposure = own.RelativeExposure ?? Number(CatalogueProperties.RelativeExposure, ground => grounds = grounds with { RelativeExposure = ground }),
            HumidityResistant = own.HumidityResistant ?? YesNo(CatalogueProperties.HumidityResistant),
            SeeThrough = own.SeeThrough ?? YesNo(CatalogueProperties.SeeThrough),
            Price = own.Price ?? Price(),
            OtherSizes = own.Price is null && own.OtherSizes.Count == 0 ? OtherSizes() : own.OtherSizes,
            DensityGPerCm3 = own.DensityGPerCm3 ?? Number(CatalogueProperties.Density, ground => grounds = grounds with { Density = ground }),
            ViscosityPaS = own.ViscosityPaS ?? Number(CatalogueProperties.Viscosity),
            SensitiveFromNm = banded ? own.SensitiveFromNm : Number(CatalogueProperties.SensitiveFrom),
            SensitiveToNm = banded ? own.SensitiveToNm : Number(CatalogueProperties.SensitiveTo),
            ResistsCleaner = own.ResistsCleaner ?? (Line(CatalogueProperties.ToCleaner) is { } cleaner ? Graded(cleaner) : null),
            Hardening = own.Hardening ?? Word<Hardening>(CatalogueProperties.Hardening),
            Reclaim = own.Reclaim ?? Word<Reclaiming>(CatalogueProperties.Reclaim),
            PotLives = own is { PotLives: null, PotLifeDays: null } ? PotLives() : own.PotLives,
            FilmThicknessUm = own.FilmThicknessUm ?? Number(CatalogueProperties.FilmThickness, ground => grounds = grounds with { FilmThickness = ground }),
            PenetrationDepthUm = curve is null ? Number(CatalogueProperties.PenetrationDepth, ground => grounds = grounds with { PenetrationDepth = ground }) : own.PenetrationDepthUm,
            CriticalDoseMjPerCm2 = curve is null ? Number(CatalogueProperties.CriticalDose) : own.CriticalDoseMjPerCm2,
        };
        return (completed with { Grounds = grounds }, taken);

        SheetLine? Take(SheetLine? line)
        {
            if (line is not null)
                taken.Add(line);
            return line;
        }

        SheetLine? Line(CatalogueProperty property) => property.IsAskedOf(own.Family) ? Take(sheet.Line(property, property.UsualAt)) : null;

        double? Number(CatalogueProperty property, Action<Ground>? stand = null)
        {
            var line = Line(property);
            if (line is not null)
                stand?.Invoke(line.Used.Ground);
            return line?.Used.Value.Number;
        }

        bool? YesNo(CatalogueProperty property) => Line(property)?.Used.Value.Word is { } word ? word == "yes" : null;

        T? Word<T>(CatalogueProperty property)
            where T : struct, Enum => Line(property)?.Used.Value.Word is { } word ? Enum.Parse<T>(word, ignoreCase: true) : null;

        // the one at the usual temperature is taken as the pot life itself
        ToldPotLife[]? PotLives()
        {
            if (!CatalogueProperties.PotLife.IsAskedOf(own.Family))
                return null;
            SheetLine[] told = [.. sheet.Lines.Where(line => line.Property == CatalogueProperties.PotLife)];
            taken.AddRange(told.Where(line => line.At != CatalogueProperties.ReferenceCelsius));
            return told.Length == 0
                ? null
                : [.. told.Select(line => new ToldPotLife(line.At ?? CatalogueProperties.ReferenceCelsius, line.Used.Value.Number!.Value, line.Used.Ground))];
        }

        ContainerPrice? Price()
        {
            if (Take(Cheapest(sheet)) is not { } line)
                return null;
            grounds = grounds with { Price = line.Used.Ground };
            return PriceOf(line);
        }

        ContainerPrice[] OtherSizes() => [.. Prices(sheet).Where(line => line != Cheapest(sheet)).Select(line => PriceOf(Take(line)!))];

        Dictionary<InkKind, GivenResistance>? Resistances()
        {
            var graded = own.Resistances?.ToDictionary() ?? [];
            foreach (var (ink, property) in Inks.Where(pair => !graded.ContainsKey(pair.Ink)))
            {
                if (Line(property) is { } line)
                    graded.Add(ink, Graded(line));
            }

            return graded.Count == 0 ? null : graded;
        }
    }

    private static GivenResistance Graded(SheetLine line) =>
        new(Enum.Parse<ResistanceGrade>(line.Used.Value.Word!, ignoreCase: true), line.Used.Ground);

    /// <summary>The container in which a kilogram costs least.</summary>
    private static SheetLine? Cheapest(CatalogueSheet sheet) =>
        Prices(sheet).MinBy(line => PriceOf(line).CostPerKg);

    private static IEnumerable<SheetLine> Prices(CatalogueSheet sheet) => sheet.Lines.Where(line => line.Property == CatalogueProperties.Price);

    private static ContainerPrice PriceOf(SheetLine line) => new(line.At!.Value, line.Used.Value.Number!.Value);
}
