using Silkwright.Choosing;
using Silkwright.Emulsion;

namespace Silkwright.Plans;

/// <summary>Offers each capillary film of a shop laid with emulsion too, beside the film laid with water.</summary>
/// <remarks>
/// Each film with one emulsion: of those that may be used for the ink, the one that stands it best, among equals the cheapest. A pair that
/// the shop names itself (<c>laidWith</c>) stands as it is. docs/engines/choosing.md, "Film laid with emulsion".
/// </remarks>
internal static class LaidFilms
{
    /// <summary>More films than this are not paired of themselves: a shop names the pairs it uses. Our own choice, for the answer's length.</summary>
    private const int MostPairs = 8;

    /// <summary>The shop's emulsions, and after them the pairs.</summary>
    public static IReadOnlyList<StencilEmulsion> Offer(Shop shop, InkKind ink, DateOnly on)
    {
        if (!shop.Emulsions.Any(IsLaidWithWater))
            return shop.Emulsions;
        var liquid = shop.Emulsions
            .Where(emulsion => emulsion.Family != EmulsionFamily.CapillaryFilm && MayBeUsed(emulsion))
            .OrderByDescending(emulsion => Resistance.To(ink, emulsion).Grade)
            .ThenBy(emulsion => FamilyValues.PricePerKg(emulsion).Value)
            .ThenBy(emulsion => emulsion.Id, StringComparer.Ordinal)
            .FirstOrDefault();
        if (liquid is null)
            return shop.Emulsions;
        var taken = shop.Emulsions.Select(emulsion => emulsion.Id).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return
        [
            .. shop.Emulsions,
            .. shop.Emulsions
                .Where(film => IsLaidWithWater(film) && MayBeUsed(film))
                .Take(MostPairs)
                .Select(film => Pair(film, liquid))
                .Where(pair => taken.Add(pair.Id)),
        ];

        bool MayBeUsed(StencilEmulsion emulsion) => HardLimits.Against(emulsion, ink, on, shop.Room.Light, shop.Room.Lux, shop.PressWash) is null;
    }

    private static bool IsLaidWithWater(StencilEmulsion emulsion) => emulsion is { Family: EmulsionFamily.CapillaryFilm, LaidWith: null };

    private static StencilEmulsion Pair(StencilEmulsion film, StencilEmulsion liquid) =>
        film with { Id = $"{film.Id} laid with {liquid.Id}", ShelfId = film.Id, LaidWith = liquid };
}
