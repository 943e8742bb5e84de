using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>A step test, read.</summary>
public sealed record StepTestReading
{
    public required ExposureCase Case { get; init; }

    public required ExposureWindow Window { get; init; }

    public required NextStrip Next { get; init; }

    /// <summary>Working curve from cured depths, doses in seconds or units of this lamp; none where fewer than three were measured, or they do not grow.</summary>
    public WorkingCurveFit? Curve { get; init; }

    /// <summary>The tests day by day; none where they are all of one day.</summary>
    public ExposureDrift? History { get; init; }

    /// <exception cref="ArgumentOutOfRangeException">The case is out of range.</exception>
    public static StepTestReading Of(ExposureCase exposure)
    {
        var history = exposure.Tests.Select(strip => strip.On).Distinct().Count() > 1 ? StepTestHistory.Of(exposure) : null;
        var asked = history is { HasDrifted: true, Since: { } since } ? exposure with { Tests = [.. exposure.Tests.Where(strip => strip.On is null || strip.On >= since)] } : exposure;
        var window = ExposureModel.Window(asked);
        if (asked != exposure)
            window = window with { Notes = [new Note($"Tests before {Figures.Day(history!.Since!.Value)} are left out of the window: the exposure has drifted since."), .. window.Notes] };
        var depths = exposure.Tests.Where(strip => !strip.Damp && strip.CuredDepthUm is not null).ToArray();
        return new StepTestReading
        {
            Case = exposure,
            Window = window,
            Next = NextStrip.Of(window),
            Curve = CurveOf([.. depths.Select(strip => strip.Amount)], [.. depths.Select(strip => strip.CuredDepthUm!.Value)]),
            History = history,
        };
    }

    private static WorkingCurveFit? CurveOf(double[] amounts, double[] depthsUm)
    {
        if (amounts.Distinct().Count() < 3)
            return null;
        try
        {
            return WorkingCurveFit.Robust(amounts, depthsUm);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
