using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Drying;

/// <summary>How long a coat dries.</summary>
/// <remarks>
/// Water leaves a wet surface at the wet bulb through the boundary layer of the air that passes, then ever more slowly towards
/// what the coat keeps in this air: docs/engines/drying.md, equations 7 to 13.
/// </remarks>
public static class DryingTime
{
    /// <summary>Heat begins to harden coats above this. [°C]. Common practice (trade articles differ from 35 to 49).</summary>
    public const double WarnAboveCelsius = 40;

    /// <summary>No coat is dried hotter than this. [°C]. Common practice.</summary>
    public const double RefuseAboveCelsius = 45;

    /// <summary>No longer time is told. [min]: one week</summary>
    public const double LongestMinutes = Figures.LongestMinutes;

    private const int CurvePoints = 80;

    /// <exception cref="ArgumentOutOfRangeException">Air hotter than 45 °C or colder than 0, or a value out of its range.</exception>
    public static DryingResult Of(DryingCase drying)
    {
        Check(drying);
        var safe = (drying.SafeMoisturePercent ?? CoatMoisture.SafePercent) / 100;
        var inputs = DryingInputs.Of(drying);
        var best = inputs.Best();
        var periods = best.Periods;

        var touch = MinutesTo(CoatMoisture.TouchDry, inputs);
        var neverSafe = Minutes(best, safe) >= LongestMinutes;
        var safeMinutes = neverSafe ? null : MinutesTo(safe, inputs);
        var risk = StickRisk.Percent(drying);
        return new DryingResult
        {
            MinutesToTouchDry = touch,
            MinutesToSafe = safeMinutes,
            Curve = CurveOf(best, safeMinutes?.Value ?? touch.Value),
            EquilibriumMoisturePercent = 100 * periods.Rest,
            StickRiskPercent = risk,
            StickReason = StickRisk.Reason(drying, risk.Value),
            Notes = [.. NotesFor(drying, periods.Rest, safe, neverSafe, touch)],
        };
    }

    private static void Check(DryingCase drying)
    {
        Require(
            drying.AirCelsius is >= MoistAir.LeastCelsius and <= RefuseAboveCelsius,
            drying.AirCelsius,
            $"Coats are dried between {MoistAir.LeastCelsius} and {RefuseAboveCelsius} °C; hotter air hardens them without light.");
        Require(drying.HumidityPercent is >= 0 and <= 100, drying.HumidityPercent, "Relative humidity lies between 0 and 100 %.");
        Require(drying.AirSpeedMPerS is null or (>= 0 and <= 20), drying.AirSpeedMPerS, "The air speed lies between 0 and 20 m/s.");
        Require(drying.WetUm.Low >= 0 && drying.WetUm.Value > 0, drying.WetUm.Value, "The wet layer must be thicker than nothing.");
        Require(
            drying.SolidsPercent is { Low: > 0, High: <= 100 }, drying.SolidsPercent.Value, "Solids lie above 0 and up to 100 %.");
        Require(drying.Faces is 1 or 2, drying.Faces, "Air reaches one face or two.");
        Require(drying.SafeMoisturePercent is null or > 0, drying.SafeMoisturePercent, "The safe moisture must be above 0 %.");
    }

    private static void Require(bool holds, object? drying, string message)
    {
        if (!holds)
            throw new ArgumentOutOfRangeException(nameof(drying), drying, message);
    }

    private static Estimate MinutesTo(double moisture, DryingInputs inputs) => Propagation
        .Through(x => Minutes(inputs.At(x), moisture), inputs.Uncertain, floor: 0, ceiling: LongestMinutes)
        .Estimate;

    private static double Minutes(WetCoat coat, double to) =>
        Math.Min(LongestMinutes, coat.Periods.Seconds(coat.StartMoisture, to) / 60);

    private static DryingPoint[] CurveOf(WetCoat coat, double untilMinutes)
    {
        var end = Math.Clamp(1.5 * untilMinutes, 10, LongestMinutes);
        return
        [
            .. Enumerable.Range(0, CurvePoints + 1).Select(i =>
            {
                var minutes = end * i / CurvePoints;
                return new DryingPoint(minutes, 100 * coat.Periods.MoistureAfter(60 * minutes, coat.StartMoisture));
            }),
        ];
    }

    private static IEnumerable<Note> NotesFor(DryingCase drying, double rest, double safe, bool neverSafe, Estimate touch)
    {
        if (drying.AirSpeedMPerS is null)
        {
            yield return new Note(
                Text($"Air speed not given: {DryingInputs.RoomAirMPerS} m/s, a room with one fan."), Ground.CommonPractice);
        }

        yield return new Note(
            "How much water the coat keeps in damp air is a guess for its family: no measured isotherm of such a coat is known.",
            Ground.CommonPractice);
        if (drying.SafeMoisturePercent is null)
        {
            yield return new Note(
                Text($"Taken as safe to expose: {CoatMoisture.SafePercent} % water of the dry coat."), Ground.CommonPractice);
        }

        if (drying.AirCelsius > WarnAboveCelsius)
        {
            yield return new Note(
                "Above 40 °C heat begins to harden the coat; keep cabinets at 25 to 35 °C and never unattended.", Ground.CommonPractice);
        }

        if (neverSafe)
        {
            yield return new Note(rest >= safe
                ? Text($"In this air the coat keeps {100 * rest:0.0} % water, never less than the safe {100 * safe:0.0} %: dry the air.")
                : "In this air the coat takes longer than a week to get safe: dry the air or move it.");
        }

        if (touch.Value >= LongestMinutes)
            yield return new Note("The coat stays wet to the touch for a week or more; the time told is cut off there.");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
