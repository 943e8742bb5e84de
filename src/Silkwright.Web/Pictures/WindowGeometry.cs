using MathNet.Numerics.Distributions;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Web.Pictures;

/// <summary>What the exposure window's picture is drawn from.</summary>
/// <remarks>
/// The least and the most amount are known only within intervals. Read as log-normal with each side's own spread (an interval
/// of 90 % ends 1.645 standard deviations out), they give at each amount a chance that the coat is cured through and a chance
/// that the finest detail is still open.
/// </remarks>
public sealed record WindowGeometry
{
    /// <summary>Ends of the amount axis beside the outermost interval ends. [1]</summary>
    private const double Beyond = 1.35;

    public required ExposureWindow Window { get; init; }

    public required PlotArea Area { get; init; }

    /// <summary>There is an amount that does both.</summary>
    public bool IsOpen => Window.Aim is not null;

    public static WindowGeometry Of(ExposureWindow window, double left, double top, double width, double height)
    {
        var from = Math.Min(window.Least.Low, window.Most.Low) / Beyond;
        var to = Math.Max(window.Least.High, window.Most.High) * Beyond;
        return new WindowGeometry
        {
            Window = window,
            Area = new PlotArea(left, top, width, height, Math.Max(from, 1e-3), to, 0, 100, LogX: true),
        };
    }

    /// <summary>Chance that this amount cures through. [%]</summary>
    public double CuredPercent(double amount) => 100 * Below(Window.Least, amount);

    /// <summary>Chance that the finest detail is still open at this amount. [%]</summary>
    public double OpenPercent(double amount) => 100 * (1 - Below(Window.Most, amount));

    /// <summary>A curve over the whole axis.</summary>
    public IReadOnlyList<(double X, double Y)> Curve(Func<double, double> percent) =>
    [.. Enumerable.Range(0, 101)
        .Select(i => Area.XAt(i / 100.0))
        .Select(amount => (Area.X(amount), Area.Y(percent(amount))))];

    /// <summary>Whole wedge steps from the aim that fall on the axis, with their amounts.</summary>
    public IReadOnlyList<(int Step, double Amount)> StepsFromAim()
    {
        var start = Window.Aim?.Value ?? Math.Sqrt(Window.Least.Value * Window.Most.Value);
        return [.. Enumerable.Range(-12, 25)
            .Select(step => (step, start * Math.Pow(10, step * DensityPerStep)))
            .Where(s => s.Item2 >= Area.XFrom && s.Item2 <= Area.XTo)];
    }

    /// <summary>Density from one step of the wedge to the next. [1]; ISO 5 density, 0.15 a step is the trade's usual wedge</summary>
    public const double DensityPerStep = 0.15;

    private static double Below(Estimate threshold, double amount)
    {
        var quantile = Normal.InvCDF(0, 1, 0.5 + (threshold.CoverPercent / 200));
        var side = amount < threshold.Value
            ? Math.Log(threshold.Value / Math.Max(threshold.Low, 1e-9))
            : Math.Log(threshold.High / threshold.Value);
        var distance = Math.Log(amount / threshold.Value);
        return side <= 0 || quantile <= 0 || !double.IsFinite(quantile)
            ? (distance >= 0 ? 1 : 0)
            : Normal.CDF(0, 1, distance / side * quantile);
    }
}
