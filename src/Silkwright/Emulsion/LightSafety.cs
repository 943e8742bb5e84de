using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>How long a coated screen may lie in the room's light.</summary>
public static class LightSafety
{
    /// <summary>
    /// Minutes a plain diazo stands before it starts to fog. [min] Guesses from the trade's habits, no source; each is good to
    /// a factor of three, since lamps, sleeves and distances differ: a half-covered coupon tells more.
    /// </summary>
    private static Estimate DiazoMinutes(RoomLight light) => light switch
    {
        RoomLight.Yellow => Estimate.WithinFactor(1440, 3, Ground.CommonPractice),
        RoomLight.Filtered => Estimate.WithinFactor(120, 3, Ground.CommonPractice),
        RoomLight.White => Estimate.WithinFactor(10, 3, Ground.CommonPractice),
        _ => throw new ArgumentOutOfRangeException(nameof(light), light, "No such room light."),
    };

    /// <summary>Minutes in the room's light before the coat starts to fog. [min]</summary>
    /// <remarks>
    /// Fogging takes a fixed share of the dose that cures, so the minutes follow the exposure time beside a plain diazo:
    /// docs/engines/emulsion.md, equation 1. Slow emulsions forgive more.
    /// </remarks>
    public static Estimate Minutes(RoomLight light, StencilEmulsion emulsion) => Propagation.Through(
        x => x[0] * x[1],
        [
            new("light of the room", DiazoMinutes(light)),
            new("speed of the emulsion", FamilyValues.RelativeExposure(emulsion)),
        ],
        floor: 0).Estimate;
}
