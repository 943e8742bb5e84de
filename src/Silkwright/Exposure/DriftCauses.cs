using System.Globalization;

namespace Silkwright.Exposure;

/// <summary>What was told with step tests and differs before and after a change.</summary>
internal static class DriftCauses
{
    /// <summary>Humidity apart by this much dries a coat to another moisture. Common practice, no source. [%]</summary>
    private const double OtherHumidity = 10;

    /// <summary>A week in a sensitised bucket is felt. Common practice, no source. [days]</summary>
    private const double OtherAge = 7;

    /// <summary>Hours that move the exposure by some 3 %. [h]</summary>
    private const double OtherHours = 100;

    internal static IEnumerable<string> Of(Lamp lamp, IReadOnlyList<StepTest[]> before, IReadOnlyList<StepTest[]> after, double shift)
    {
        var found = false;
        var (oldBatches, newBatches) = (Batches(before), Batches(after));
        if (oldBatches.Count > 0 && newBatches.FirstOrDefault(batch => !oldBatches.Contains(batch)) is { } batch)
        {
            found = true;
            yield return $"A new batch, {batch}.";
        }

        if (Apart(strip => strip.HumidityPercent, OtherHumidity) is var (was, now) && now > was == shift > 0)
        {
            found = true;
            yield return Text($"The air the screens dried in: {was:0} % before, {now:0} % since. {(shift > 0 ? "Coats that were not dry read as under-exposed: dry longer before exposing longer." : "Drier coats need less light.")}");
        }

        if (Apart(strip => strip.SensitiserDays, OtherAge) is var (young, old) && old > young == shift < 0)
        {
            found = true;
            yield return Text($"The sensitised emulsion: {young:0} days old before, {old:0} days since. It goes on hardening in the bucket.");
        }

        if (Apart(strip => strip.LampHours, OtherHours) is var (fresh, aged))
        {
            found = true;
            yield return lamp.Counts == ExposureCount.Units
                ? Text($"The lamp: {fresh:0} h before, {aged:0} h since. The integrator makes up for its strength, not for its colour.")
                : Text($"The lamp: {fresh:0} h before, {aged:0} h since. Common practice for that is reckoned with; this is what goes beyond it.");
        }

        if (!found)
            yield return "Nothing told with the tests changed then. Look at lamp and glass, the drying room, the batch, and who washed out.";

        (double Before, double After)? Apart(Func<StepTest, double?> of, double least) =>
            before.SelectMany(day => day).Average(of) is { } was && after.SelectMany(day => day).Average(of) is { } now && Math.Abs(now - was) >= least ? (was, now) : null;
    }

    private static HashSet<string> Batches(IReadOnlyList<StepTest[]> days) =>
        [.. days.SelectMany(day => day).Select(strip => strip.Batch).OfType<string>()];

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
