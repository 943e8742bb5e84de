using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Cli.Commands.Plan;

/// <summary>An exposure window as a bar of characters over a logarithmic scale.</summary>
internal static class ExposurePicture
{
    private const int Characters = 60;

    /// <summary>How far the scale goes beyond the widest interval, either way.</summary>
    private const double Beyond = 1.25;

    public static IEnumerable<string> Lines(ExposureWindow window, ShownUnit unit)
    {
        var from = Math.Min(window.Least.Low, window.Most.Low) / Beyond;
        var to = Math.Max(window.Least.High, window.Most.High) * Beyond;
        if (!(from > 0))
            yield break;
        var bar = string.Concat(Enumerable.Range(0, Characters).Select(i => Mark(window, from * Math.Pow(to / from, (i + 0.5) / Characters))));
        yield return $"{bar}  {Figures.Whole(from)} to {unit.Write(Math.Round(to))}";
        if (window.Aim is { } aim)
        {
            var at = Math.Clamp((int)(Characters * Math.Log(aim.Value / from) / Math.Log(to / from)), 0, Characters - 1);
            yield return new string(' ', at) + "▲ aim";
        }

        yield return "█ works   ▓ likeliest to work   ░ may work   · soft below, closed above";
    }

    private static char Mark(ExposureWindow window, double amount)
    {
        if (amount >= window.Least.High && amount <= window.Most.Low)
            return '█';
        if (amount >= window.Least.Value && amount <= window.Most.Value)
            return '▓';
        return amount >= window.Least.Low && amount <= window.Most.High ? '░' : '·';
    }
}
