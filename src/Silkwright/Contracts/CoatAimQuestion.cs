using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;
using Silkwright.Naming;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>The strokes for a wanted thickness: <c>coat aim</c>.</summary>
public static class CoatAimQuestion
{
    public static readonly QuantityField Wanted = new("wanted", QuantityKind.Thickness, "emulsion over mesh that is wanted") { Sample = "14um", Required = true, Least = 1, Most = InputLimits.MostEomUm };

    public static readonly QuantityField Tolerance = new("tolerance", QuantityKind.Thickness, "how far it may be off, either way; 20 % of it when not given") { Sample = "3um", Least = 0.1, Most = InputLimits.MostEomUm };

    public static readonly TextField Emulsion = new("emulsion", "the emulsion, as the readings name it", "\"Copper dual\"") { Required = true };

    public static readonly QuantityField Solids = new("solids", QuantityKind.Share, "its solids by weight; as the readings tell when not given") { Sample = "38%", Least = InputLimits.LeastSolidsPercent, Most = 100 };

    public static readonly TextField Shop = new("shop", "the shop whose people and troughs are asked; when not given, the only one of the readings, or a shop like all", "\"Harbour Shirts\"");

    public static readonly TextField Operator = new("operator", "only this person", "Ada");

    public static readonly TextField Trough = new("trough", "only this trough of the readings", "round");

    public static readonly QuantityField Area = new("area", QuantityKind.Area, "coated area of a screen; 50 x 60 cm when not given") { Least = 10, Most = InputLimits.MostAreaCm2 };

    private const double UsualToleranceShare = 0.2;
    private const double UsualAreaCm2 = 3000;
    private const int MostHands = 60;

    public static IReadOnlyList<QuestionField> Fields => [Wanted, Tolerance, Emulsion, Solids, MeshQuestion.Count, MeshQuestion.Thread, Shop, Operator, Trough, Area];

    /// <param name="given">What was typed.</param>
    /// <param name="readings">All readings, of any shops; none: what the trade expects.</param>
    /// <param name="elsewhere">What readings of yet other shops taught; none: these readings alone.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">Something typed is wrong or missing.</exception>
    public static CoatAimAnswer Answer(GivenTexts given, IReadOnlyList<CoatRow> readings, CoatExperience? elsewhere = null, CancellationToken cancel = default)
    {
        var (wanted, mesh) = (given.ReadRequired(Wanted), MeshQuestion.Read(given, MeshQuestion.Count));
        var (tolerance, solids, area) = (given.Read(Tolerance), given.Read(Solids), given.Read(Area));
        var (emulsion, shop, person, trough) = (given.Read(Emulsion), given.Read(Shop), given.Read(Operator), given.Read(Trough));
        var taken = new CoatReadings(readings, []);
        readings = taken.Rows;
        var shops = readings.Select(row => row.Coat.Shop).Distinct().ToArray();
        shop ??= shops is [var only] ? only : null;
        if (shop is not null)
            (shop, person, trough) = taken.Spelled(shop, person, trough);
        var own = readings.Where(row => row.Coat.Shop == shop).ToArray();
        string?[] people = [.. own.Select(row => row.Coat.Operator).OfType<string>().Distinct()];
        (Trough Trough, bool EdgeIsKnown)[] troughs = [.. own.Where(row => row.Coat.Trough.Id.Length > 0).Select(row => (row.Coat.Trough, row.Coat.EdgeIsKnown)).Distinct()];
        if (shops.Length > 0)
            Known(given, Shop, shop, shops);
        Known(given, Operator, person, people);
        Known(given, Trough, trough, [.. troughs.Select(one => one.Trough.Id).Distinct()]);
        given.ThrowIfAny();

        var asked = new CoatObservation
        {
            Shop = shop ?? "a shop like all",
            Trough = new Trough("", CoatDefaults.RoundEdgeMm),
            EdgeIsKnown = false,
            Emulsion = readings.FirstOrDefault(row => row.Coat.Emulsion.Id == emulsion && (solids is null || row.Coat.Emulsion.SolidsPercent == solids))?.Coat.Emulsion
                ?? new StencilEmulsion { Id = emulsion!, Family = EmulsionFamily.DualCure, SolidsPercent = solids },
            Mesh = WovenMesh.Of(mesh),
            Strokes = [],
        };
        // Whoever coats there may take any trough that is there.
        CoatObservation[] hands =
        [
            .. (from one in troughs.Where(one => trough is null || one.Trough.Id == trough).DefaultIfEmpty((asked.Trough, asked.EdgeIsKnown))
                from name in people.Where(name => person is null || name == person).DefaultIfEmpty()
                select asked with { Operator = name, Trough = one.Item1, EdgeIsKnown = one.Item2 }).Take(MostHands),
        ];
        var within = tolerance ?? (UsualToleranceShare * wanted);
        var aim = CoatAim.Of(wanted, within, hands, CoatHierarchy.Of(taken.Shared, CoatExperienceQuestion.Beside(taken.Shared, elsewhere), cancel));
        var nobody = people.Length == 0 && troughs.Length == 0;
        return new CoatAimAnswer(wanted, within, (area ?? UsualAreaCm2) / 10_000, aim, [.. CoatAimWords.Notes(asked.Emulsion, nobody, area is null, readings.Count, elsewhere), .. taken.NameNotes, .. aim.Laid.Notes]);
    }

    /// <summary>The same out of a shop's own people, troughs, emulsions and readings.</summary>
    /// <param name="given">What was typed; the emulsion is one of the shop's liquids.</param>
    /// <param name="shop">As it is told.</param>
    /// <exception cref="InputProblemException">Something typed is wrong or missing.</exception>
    public static CoatAimAnswer Of(GivenTexts given, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(shop);
        var (wanted, mesh) = (given.ReadRequired(Wanted), MeshQuestion.Read(given, MeshQuestion.Count));
        var (tolerance, solids, area) = (given.Read(Tolerance), given.Read(Solids), given.Read(Area));
        var (emulsion, person, trough) = (given.Read(Emulsion), given.Read(Operator), given.Read(Trough));
        var coats = LearntShopCoats.Of(shop);
        Known(given, Emulsion, emulsion, [.. coats.Liquids.Select(liquid => liquid.Id)]);
        person = coats.People.FirstOrDefault(one => Spellings.AreOne(one, person)) ?? person;
        trough = coats.Troughs.FirstOrDefault(one => Spellings.AreOne(one.Id, trough))?.Id ?? trough;
        Known(given, Operator, person, [.. coats.People]);
        Known(given, Trough, trough, [.. coats.Troughs.Select(one => one.Id)]);
        given.ThrowIfAny();

        var liquid = coats.Liquids.First(one => one.Id == emulsion);
        var within = tolerance ?? (UsualToleranceShare * wanted);
        var aim = coats.Aim(wanted, within, solids is null ? liquid : liquid with { SolidsPercent = solids }, coats.Meshes.FirstOrDefault(own => own.Name == mesh.Name) ?? mesh, person, trough);
        return new CoatAimAnswer(wanted, within, (area ?? UsualAreaCm2) / 10_000, aim, [.. CoatAimWords.Notes(aim.Best.Coat.Emulsion, false, area is null, coats.Count, coats.Elsewhere), .. aim.Laid.Notes]);
    }

    private static void Known(GivenTexts given, TextField field, string? name, string?[] known)
    {
        if (name is not null && !known.Contains(name))
            given.Problems.Add($"No {field.Name} '{name}' is known here.", given.Where(field), known.Length == 0 ? "Leave it out." : $"Write one of {string.Join(", ", known.Take(8))}, or leave it out.");
    }
}
