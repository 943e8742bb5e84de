using MathNet.Numerics.Distributions;

namespace Silkwright.Exposure;

/// <summary>How much an exposure forgives: the window beside what a lamp, a shutter and a hand scatter.</summary>
/// <param name="SecondsEitherSide">From a good aim to the nearer end of the window; none where the machine counts units, or nothing holds. [s]</param>
/// <param name="RightPercent">Exposures at a good aim that land inside the window. [%]</param>
public sealed record Forgiveness(double? SecondsEitherSide, double RightPercent)
{
    /// <summary>
    /// Standard deviation of the natural log of a shop's dose, day by day: lamp, humidity, thickness. Common practice (10 to 15 %),
    /// no source.
    /// </summary>
    public const double DailyDoseScatter = 0.12;

    /// <summary>Standard deviation of what a shutter, a strike of the lamp and a hand on a switch add. Common practice, no source. [s]</summary>
    public const double ShutterScatterSeconds = 1;

    /// <summary>
    /// A fast emulsion may have as many stops of room as a slow one and still forgive less: the second that a shutter scatters is a
    /// larger share of its time.
    /// </summary>
    /// <remarks>
    /// Of a window that a step test has placed, aimed at as one aims at what is known. Normal scatter on the log of dose, the shutter's second taken as a share of
    /// the aim and added as squares: docs/engines/exposure.md, "Forgiveness".
    /// </remarks>
    public static Forgiveness Of(ExposureWindow window)
    {
        if (window.Aim is null)
            return new Forgiveness(null, 0);
        var (least, most) = (window.Least.Value, window.Most.Value);
        var aim = Math.Min(Math.Sqrt(least * most), ExposureAim.AtMostOverLeast * least);
        var seconds = window.Counts == ExposureCount.Seconds;
        var shutter = seconds ? ShutterScatterSeconds / aim : 0;
        var scatter = Math.Sqrt((DailyDoseScatter * DailyDoseScatter) + (shutter * shutter));
        var right = Normal.CDF(0, scatter, Math.Log(most / aim)) - Normal.CDF(0, scatter, Math.Log(least / aim));
        return new Forgiveness(seconds ? Math.Min(aim - least, most - aim) : null, 100 * Math.Clamp(right, 0, 1));
    }
}
