using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>The one strip more that would tell most.</summary>
/// <param name="Amount">What to give it; none where nothing more is needed.</param>
/// <param name="Why">The reason, in one sentence.</param>
public sealed record NextStrip(double? Amount, string Why)
{
    /// <summary>An aim known this well is left alone; a wedge on every screen watches it. Common practice, no source. [1]</summary>
    private const double GoodHalf = 0.15;

    /// <summary>A strip where soft and hard, or held and lost, are as likely: its reading cuts what is not known in half.</summary>
    public static NextStrip Of(ExposureWindow window)
    {
        if (window.Aim is not { } aim)
            return new(window.Least.Value, "No exposure does both: one strip at the least that cures through tells which of the two ends is wrong.");
        if ((aim.High - aim.Low) / 2 < GoodHalf * aim.Value)
            return new(null, "The aim is known well enough. Put a wedge on every screen and watch that it reads the same.");
        return Width(window.Least) >= Width(window.Most)
            ? new(window.Least.Value, "Where the coat cures through is known least: here the squeegee side may come out soft or hard.")
            : new(window.Most.Value, "Where the detail closes is known least: here the finest line may be held or lost.");
    }

    private static double Width(Estimate end) => end.High / end.Low;
}
