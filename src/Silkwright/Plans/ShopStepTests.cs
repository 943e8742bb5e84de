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

    /// <summary>Step tests made after a day, told; none where there are none.</summary>
    /// <remarks>They count as if they were of that day: what is known of an emulsion and a lamp today serves a job that is dated before better than to leave it out.</remarks>
    public static Note? Later(DateOnly than, Shop shop)
    {
        DateOnly[] days = [.. shop.ExposureReadings.Select(reading => reading.Test.On).OfType<DateOnly>().Where(day => day > than).Distinct().Order()];
        return days switch
        {
            [] => null,
            [var only] => Told($"The step test of {only:yyyy-MM-dd} was made after the day this is for, {than:yyyy-MM-dd}; it counts as one of that day. Where the plan is for a later one, give the job that date."),
            _ => Told($"The step tests of {days.Length} days, {days[0]:yyyy-MM-dd} to {days[^1]:yyyy-MM-dd}, were made after the day this is for, {than:yyyy-MM-dd}; they count as of that day. Where the plan is for a later one, give the job that date."),
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
