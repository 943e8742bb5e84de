namespace Silkwright.Exposure;

/// <summary>How far a strip may be out, in natural logarithms of exposure where nothing else is said.</summary>
/// <remarks>All common practice, no source: the trade's own words on what moves a reading, put into figures. docs/engines/exposure.md, equation 13.</remarks>
internal static class StripNoise
{
    /// <summary>Shop by shop, step 7 stands at some other exposure than a quarter over through-cure: a step either way at the outside. Stays from test to test.</summary>
    internal const double WedgeHabit = 0.15;

    /// <summary>Wash-out changes the reading by one step from its gentlest to its hardest; evenly between, 0.29 of a step. One hand a test.</summary>
    internal const double WashOutHand = 0.1;

    /// <summary>Telling the last solid step, beyond its being a whole one. [steps]</summary>
    internal const double ReadingSteps = 0.3;

    /// <summary>How sharply soft turns to hard from strip to strip: light even to 5 %, a coat to 1.5 µm, a finger that is sure within 15 % either way.</summary>
    internal const double SoftTurn = 0.12;

    /// <summary>How sharply held turns to lost: the same light, and a loupe that tells a twentieth of a line.</summary>
    internal const double HeldTurn = 0.15;

    /// <summary>A reading may always be a slip. [1]</summary>
    internal const double Slip = 0.01;

    /// <summary>What one day stands off the shop's level: lamp, humidity, thickness.</summary>
    internal const double Day = Forgiveness.DailyDoseScatter;

    /// <summary>
    /// The same where the coat's thickness was measured on the strips and reckoned with: a hand's 10 % of 57 µm moves through-cure by 7 %, and what is left of 12 % is
    /// lamp and humidity.
    /// </summary>
    internal const double DayOfMeasuredCoat = 0.1;

    /// <summary>Where strips of the day contradict each other: what moved one strip against another, uneven light or coat or a mixed-up strip, moved their level too.</summary>
    internal const double DayOfContradictions = 0.15;

    /// <summary>Where strips contradict each other, some readings are slips. [1]</summary>
    internal const double SomeSlip = 0.1;

    /// <summary>Or many. [1]</summary>
    internal const double ManySlip = 0.3;

    /// <summary>Or the wedge lay or was counted otherwise that day: three steps either way.</summary>
    internal const double WedgeAsAWhole = 1;

    /// <summary>The level wanders by so much in a year, as a random walk: an old test counts less. Lamp hours that are told are reckoned with beside it.</summary>
    internal const double WanderInAYear = 0.15;
}
