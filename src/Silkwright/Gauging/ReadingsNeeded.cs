namespace Silkwright.Gauging;

/// <summary>How many readings bring a mean within a wanted half width.</summary>
/// <param name="WantedUm">Half width of the interval wanted. [µm]</param>
/// <param name="OneHand">Readings of one place by one operator, against that operator's own others; none where more than can be taken.</param>
/// <param name="OneHandAtWorst">The same where repeatability lies at the upper end of its interval.</param>
/// <param name="Hands">Operators who must share them for the shop's own figure, each reading once; none where more than can be had.</param>
public sealed record ReadingsNeeded(double WantedUm, int? OneHand, int? OneHandAtWorst, int? Hands)
{
    /// <summary>Half width of a normal's middle 90 %, in standard deviations.</summary>
    private const double HalfWidth90 = 1.6448536269514722;

    private const int MostReadings = 1000;

    /// <summary>n = (z s / x)², rounded up: any text on sampling. What one operator reads high or low does not shrink with more of that operator's readings.</summary>
    public static ReadingsNeeded Of(double wantedUm, StudyFigures figures) => new(
        wantedUm, For(wantedUm, figures.RepeatabilityUm.Value), For(wantedUm, figures.RepeatabilityUm.High), For(wantedUm, figures.GaugeUm.Value));

    /// <summary>Readings whose mean lies within a half width of the truth in nine of ten cases; none where more than a thousand.</summary>
    internal static int? For(double wantedUm, double deviationUm)
    {
        var n = Math.Ceiling(Math.Pow(HalfWidth90 * deviationUm / wantedUm, 2) - 1e-9);
        return n > MostReadings ? null : Math.Max(1, (int)n);
    }
}
