using System.Globalization;
using Silkwright.Emulsion;
using Silkwright.Exposure;
using Silkwright.Stock;

namespace Silkwright.Choosing;

/// <summary>What forbids an emulsion whatever it costs.</summary>
public static class HardLimits
{
    /// <summary>
    /// How long a coated screen lies in the room's light between drying and exposure and while it is handled. Common practice,
    /// no source. [min]
    /// </summary>
    private const double MinutesInRoomLight = 10;

    /// <summary>The first limit that forbids the emulsion; none when it may be used.</summary>
    /// <param name="emulsion">The emulsion, as it stands on the shelf.</param>
    /// <param name="ink">Ink of the colour.</param>
    /// <param name="on">Day of the plan.</param>
    /// <param name="light">Light of the room; none: not known, no limit.</param>
    /// <param name="lux">How bright it is; none: not read. [lx]</param>
    public static HardLimit? Against(StencilEmulsion emulsion, InkKind ink, DateOnly on, RoomLight? light, double? lux)
    {
        if (emulsion.LaidWith is not { } laying)
            return Alone(emulsion);
        return Alone(emulsion.WithoutLaying())
            ?? (Alone(laying) is { } limit ? limit with { Why = $"of {laying.Id}, which it is laid with: {limit.Why}" } : null);

        HardLimit? Alone(StencilEmulsion part) => InkAttacks(part, ink) ?? LifeOver(part, on) ?? LightFogs(part, light, lux);
    }

    /// <summary>No exposure both cures through and holds the detail, even at the favourable ends of both.</summary>
    public static HardLimit? NoWindow(ExposureWindow window) => window.Aim is not null || window.Least.Low <= window.Most.High
        ? null
        : new HardLimit(
            "no exposure both cures through and holds the finest detail",
            window.OpensBy.Count > 0 ? window.OpensBy[0] : "coat thinner",
            FixEffort: 2);

    private static HardLimit? InkAttacks(StencilEmulsion emulsion, InkKind ink)
    {
        var answer = Resistance.To(ink, emulsion);
        return answer.Grade != ResistanceGrade.Poor ? null : new HardLimit(
            Clause.Of(answer.Reason), $"buy an emulsion made for {InkWords.Of(ink)} ink", FixEffort: 3);
    }

    private static HardLimit? LifeOver(StencilEmulsion emulsion, DateOnly on)
    {
        var lot = PotLife.Of(emulsion, on);
        if (!lot.Over)
            return null;
        var days = Math.Abs(lot.DaysLeft?.Value ?? 0).ToString("0", CultureInfo.InvariantCulture);
        return emulsion.SensitisedOn is null
            ? new HardLimit($"this lot's shelf life ended {days} days ago", $"take a fresh lot of {emulsion.Id}", FixEffort: 2)
            : new HardLimit($"this lot's pot life ended {days} days ago", $"mix a fresh container of {emulsion.Id}", FixEffort: 1);
    }

    private static HardLimit? LightFogs(StencilEmulsion emulsion, RoomLight? light, double? lux)
    {
        if (light is not { } known)
            return null;
        var minutes = LightSafety.Minutes(known, emulsion, lux);
        return minutes.Value >= MinutesInRoomLight ? null : new HardLimit(
            string.Create(CultureInfo.InvariantCulture, $"in this room's light the coat fogs in about {minutes.Value:0.#} minutes; a screen lies there {MinutesInRoomLight:0} at least"),
            "make the room's light yellow",
            FixEffort: 2);
    }
}
