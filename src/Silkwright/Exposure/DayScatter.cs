namespace Silkwright.Exposure;

/// <summary>What one day's exposure stands off the shop's level, in natural logarithms of exposure; standard deviations.</summary>
/// <param name="Dose">Lamp, humidity and shutter: both ends of the window move alike.</param>
/// <param name="LeastByCoat">The coat's thickness, on what cures through.</param>
/// <param name="MostByCoat">The same thickness on what still holds the detail; of other sign where a thicker coat closes it sooner.</param>
/// <remarks>Common practice, no source: docs/engines/exposure.md, equation 19.</remarks>
public sealed record DayScatter(double Dose, double LeastByCoat, double MostByCoat)
{
    /// <param name="inputs">The window's; the coat is taken to vary from screen to screen as far as its interval says.</param>
    /// <param name="seconds">About what is exposed; none: not in seconds, and no shutter's own scatter is known.</param>
    internal static DayScatter Of(WindowInputs inputs, double? seconds)
    {
        var shutter = seconds is { } exposed ? Forgiveness.ShutterScatterSeconds / exposed : 0;
        var (thin, thick) = (inputs.WithStencil(stencil => stencil.Low), inputs.WithStencil(stencil => stencil.High));
        var through = (inputs.Through(thick) - inputs.Through(thin)) / (2 * LogBelief.UsualReach);
        var room = (inputs.Room(thick) - inputs.Room(thin)) / (2 * LogBelief.UsualReach);
        return new(Math.Sqrt((StripNoise.DayOfMeasuredCoat * StripNoise.DayOfMeasuredCoat) + (shutter * shutter)), through, through + room);
    }
}
