using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Plans;

/// <summary>The step tests that a shop has made, one emulsion on one lamp and mesh at a time.</summary>
public static class ShopStepTests
{
    /// <summary>Every combination that has tests, the most tested first.</summary>
    public static IReadOnlyList<ExposureCase> Of(Shop shop, DateOnly? on) =>
    [
        .. shop.ExposureReadings
            .GroupBy(reading => (Emulsion: reading.EmulsionId.ToUpperInvariant(), Lamp: reading.LampId?.ToUpperInvariant(), Mesh: reading.Mesh is { } mesh ? (mesh.Name, mesh.Dyed) : default((string, bool)?)))
            .OrderByDescending(group => group.Select(reading => reading.Test.On).Distinct().Count())
            .ThenByDescending(group => group.Count())
            .Select(group => CaseOf(shop, [.. group], on))
            .OfType<ExposureCase>(),
    ];

    /// <summary>The shop with the step tests exposed by a day; those without a day are among them.</summary>
    public static Shop By(DateOnly on, Shop shop) => shop with { ExposureReadings = [.. shop.ExposureReadings.Where(reading => !(reading.Test.On > on))] };

    /// <summary>What that leaves out, told; none where nothing is.</summary>
    public static Note? LeftOut(DateOnly on, Shop shop)
    {
        DateOnly[] days = [.. shop.ExposureReadings.Select(reading => reading.Test.On).OfType<DateOnly>().Where(day => day > on).Distinct().Order()];
        return days switch
        {
            [] => null,
            [var only] => Told($"The step test of {only:yyyy-MM-dd} was made after the day this is for, {on:yyyy-MM-dd}, and is left out: what was not exposed yet cannot speak of it. Where it should count, give the job a later date, or correct the test's."),
            _ => Told($"The step tests of {days.Length} days, {days[0]:yyyy-MM-dd} to {days[^1]:yyyy-MM-dd}, were made after the day this is for, {on:yyyy-MM-dd}, and are left out: what was not exposed yet cannot speak of it. Where they should count, give the job a later date, or correct theirs."),
        };

        static Note Told(FormattableString text) => new(text.ToString(CultureInfo.InvariantCulture));
    }

    private static ExposureCase? CaseOf(Shop shop, ExposureReading[] readings, DateOnly? on)
    {
        var first = readings[0];
        var emulsion = shop.Emulsions.FirstOrDefault(known => Same(known.Id, first.EmulsionId));
        var lamp = first.LampId is null ? (shop.Lamps.Count == 1 ? shop.Lamps[0] : null) : shop.Lamps.FirstOrDefault(known => Same(known.Id, first.LampId));
        var fabric = first.Mesh ?? (shop.Meshes.Count > 0 ? shop.Meshes[0] : null);
        if (emulsion is null || lamp is null || fabric is null)
            return null;
        StepTest[] tests = [.. readings.Select(reading => reading.Test)];
        var eom = StripCoat.EomUm(tests);
        return new ExposureCase
        {
            Mesh = fabric,
            EomUm = eom,
            StencilUm = StencilThickness.Of(fabric, eom),
            Emulsion = emulsion,
            Lamp = lamp,
            Film = shop.Film,
            Tests = tests,
            On = on,
        };
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
