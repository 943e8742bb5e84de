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
    /// <param name="wash">What screens are wiped with on press; none: not known, no limit.</param>
    public static HardLimit? Against(StencilEmulsion emulsion, InkKind ink, DateOnly on, RoomLight? light, double? lux, PressWash? wash = null)
    {
        if (emulsion.LaidWith is not { } laying)
            return Alone(emulsion);
        return Alone(emulsion.WithoutLaying())
            ?? (Alone(laying) is { } limit ? limit with { Why = $"of {laying.Id}, which it is laid with: {limit.Why}" } : null);

        HardLimit? Alone(StencilEmulsion part) => InkAttacks(part, ink) ?? LifeOver(part, on) ?? LightFogs(part, light, lux) ?? WashAttacks(part, wash);
    }

    /// <summary>No lamp gives light that the emulsion answers to.</summary>
    /// <param name="emulsion">The emulsion.</param>
    /// <param name="lamps">The shop's lamps, those left out that a step test has shown to harden it; at least one.</param>
    public static HardLimit? NoLamp(StencilEmulsion emulsion, IReadOnlyList<Lamp> lamps)
    {
        if (!lamps.All(lamp => LampSpectrum.Misses(lamp, emulsion)))
            return null;
        var part = LampSpectrum.Misses(lamps[0], emulsion.WithoutLaying()) ? emulsion : emulsion.Liquid();
        var (from, to) = LampSpectrum.Band(lamps[0]);
        return new HardLimit(
            string.Create(CultureInfo.InvariantCulture, $"the light of {lamps[0].Id} (about {from:0} to {to:0} nm) lies outside what {part.Id} answers to ({part.SensitiveFromNm:0} to {part.SensitiveToNm:0} nm)"),
            string.Create(CultureInfo.InvariantCulture, $"expose {part.Id} with a lamp between {part.SensitiveFromNm:0} and {part.SensitiveToNm:0} nm, or show with a step test that this one hardens it"),
            FixEffort: 3);
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

    private static HardLimit? WashAttacks(StencilEmulsion emulsion, PressWash? wash) =>
        WashResistance.To(wash, emulsion) is { Grade: ResistanceGrade.Poor } answer
            ? new HardLimit(Clause.Of(answer.Reason), "wipe its screens with something else on press", FixEffort: 1)
            : null;

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
