using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Stock;

namespace Silkwright.Scheduling.Shelf;

/// <summary>What keeping an emulsion costs a shop, in each size it is sold in, at the pace of the jobs made with it.</summary>
/// <param name="gramsPerMonth">Use by emulsion. [g/month], 0 or more</param>
internal sealed class ShopStock(IReadOnlyDictionary<string, double> gramsPerMonth)
{
    /// <summary>Step test, control strip and the crew's practice that each thing kept asks for. Common practice, no source. [min/month]</summary>
    private const double MinutesForOne = 60;

    /// <summary>Step tests, coat readings and trial prints that an emulsion new to the shop asks for. Common practice, no source. [h]</summary>
    private const double HoursToTry = 6;

    /// <summary>An emulsion taken on is kept for a year at least. Our own choice. [months]</summary>
    private const double MonthsToSpread = 12;

    private const double DaysPerMonth = FamilyValues.DaysPerMonth;

    /// <summary>How far a month's use may lie from the jobs' sum, as a share of it. Common practice, no source. [1]</summary>
    private const double UseSpread = 0.2;

    /// <summary>Less of a container than this a month counts as this: it dies nearly whole either way. [1]</summary>
    private const double LeastShareUsed = 0.001;

    /// <summary>A film that is laid with an emulsion is two things to keep. [min/month]</summary>
    public static double MinutesToKeep(StencilEmulsion kept) => kept.LaidWith is null ? MinutesForOne : 2 * MinutesForOne;

    public static Estimate LabourPerHour(Shop shop) =>
        shop.Prices.LabourPerHour is { } own ? Estimate.Within(own, WorkTimes.OwnLabourSpread, Ground.MeasuredHere) : WorkTimes.LabourPerHour;

    /// <summary>What taking on an emulsion new to the shop costs. [currency/month]</summary>
    public static double TryingPerMonth(Shop shop) => HoursToTry * LabourPerHour(shop).Value / MonthsToSpread;

    /// <summary>Sizes it, or the emulsion it is laid with, is sold in, the one bought today first; one of the usual size where the shop names no price.</summary>
    public static IReadOnlyList<ContainerPrice> Sizes(StencilEmulsion kept)
    {
        var emulsion = kept.Liquid();
        if (emulsion is { Price: null, OtherSizes.Count: > 0 })
            return emulsion.OtherSizes;
        var priced = emulsion.Price ?? new ContainerPrice(ContainerPrice.UsualGrams, FamilyValues.PricePerKg(emulsion).Value * ContainerPrice.UsualGrams / 1000);
        return [priced, .. emulsion.OtherSizes.Where(size => size.Grams != priced.Grams)];
    }

    /// <summary>What a kilogram costs in a size, with its usual spread. [currency/kg]</summary>
    public static Estimate PricePerKg(StencilEmulsion kept, ContainerPrice size)
    {
        var emulsion = kept.Liquid();
        return FamilyValues.PricePerKg(emulsion.Price is null && emulsion.OtherSizes.All(other => other != size) ? emulsion : emulsion with { Price = size });
    }

    /// <summary>What dies of an emulsion in a month in that size, as expected. [g/month]</summary>
    public double WasteGrams(StencilEmulsion emulsion, ContainerPrice size) =>
        Waste.Beside(Used(emulsion, size), Waste.SharePercent(CaseOf(emulsion, size)).Value);

    /// <summary>The same where use and life fall out in one way. [g/month]</summary>
    /// <param name="emulsion">The emulsion.</param>
    /// <param name="size">In that size.</param>
    /// <param name="share">Share of all ways in which less dies. [1], above 0, below 1</param>
    public double WasteGramsAt(StencilEmulsion emulsion, ContainerPrice size, double share) =>
        Waste.Beside(Used(emulsion, size), Waste.PercentAt(CaseOf(emulsion, size), share));

    private double Used(StencilEmulsion emulsion, ContainerPrice size) => Math.Max(gramsPerMonth[emulsion.Id], LeastShareUsed * size.Grams);

    private WasteCase CaseOf(StencilEmulsion kept, ContainerPrice size)
    {
        var emulsion = kept.Liquid();
        return new(emulsion.Family, size.Grams, PotLife.LifeDays(emulsion), Estimate.Within(Used(kept, size) / DaysPerMonth, UseSpread, Ground.Model));
    }
}
