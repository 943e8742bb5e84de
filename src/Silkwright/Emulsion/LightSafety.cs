using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>How long a coated screen may lie in the room's light.</summary>
public static class LightSafety
{
    /// <summary>
    /// Minutes a plain diazo stands before it starts to fog. [min] Guesses from the trade's habits, no source; each is good to
    /// a factor of three, since lamps, sleeves and distances differ: a half-covered coupon tells more.
    /// </summary>
    private static double DiazoMinutes(RoomLight light) => light switch
    {
        RoomLight.Yellow => 1440,
        RoomLight.Filtered => 120,
        RoomLight.White => 10,
        _ => throw new ArgumentOutOfRangeException(nameof(light), light, "No such room light."),
    };

    /// <summary>A factor either way: lamps, sleeves and distances differ. [1]</summary>
    private const double Spread = 3;

    /// <summary>The same where somebody has read how bright the room is: lamps and sleeves still differ. Guess, no source. [1]</summary>
    private const double SpreadWithLux = 2;

    /// <summary>How bright a work room usually is, for which the minutes are told. Common practice, no source. [lx]</summary>
    private const double UsualLux = 300;

    /// <summary>Minutes in the room's light before the coat starts to fog. [min]</summary>
    /// <param name="light">What kind of light.</param>
    /// <param name="emulsion">The coat.</param>
    /// <param name="lux">How bright it is where the screens lie; none: not read, a usual room is assumed. [lx], above 0</param>
    /// <remarks>
    /// Fogging takes a fixed share of the dose that cures, so the minutes follow the exposure time beside a plain diazo:
    /// docs/engines/emulsion.md, equation 1. Slow emulsions forgive more, and half the light gives twice the time. Of a film and the
    /// emulsion it is laid with, the faster fogs first.
    /// </remarks>
    public static Estimate Minutes(RoomLight light, StencilEmulsion emulsion, double? lux = null)
    {
        var alone = Alone(light, emulsion, lux);
        return emulsion.LaidWith is { } laying && Alone(light, laying, lux) is var under && under.Value < alone.Value ? under : alone;
    }

    private static Estimate Alone(RoomLight light, StencilEmulsion emulsion, double? lux) => Propagation.Through(
        x => x[0] * x[1],
        [
            new("light of the room", Estimate.WithinFactor(
                DiazoMinutes(light) * UsualLux / (lux ?? UsualLux), lux is null ? Spread : SpreadWithLux, Ground.CommonPractice)),
            new("speed of the emulsion", FamilyValues.RelativeExposure(emulsion)),
        ],
        floor: 0).Estimate;
}
