using Silkwright.Exposure;

namespace Silkwright.Web.Pictures;

/// <summary>What a washed-out wedge shows.</summary>
public static class WedgeGeometry
{
    /// <summary>Steps of the usual wedge.</summary>
    public const int Steps = 21;

    /// <summary>From the last solid step to the last trace. Common practice: docs/engines/exposure.md, defaults. [steps]</summary>
    private const double Fading = 5;

    /// <summary>The step that is just solid at an amount, from the one at the aim and the density between.</summary>
    public static double SolidStep(ExposureWindow window, double amount) =>
        window.SolidStepAtAim!.Value + (Math.Log10(amount / window.Aim!.Value) / StepWedge.UsualDensityPerStep);

    /// <summary>The whole step that a person reads as the last solid one.</summary>
    public static int LastSolid(double solid) => Math.Clamp((int)Math.Round(solid), 0, Steps);

    /// <summary>Coat left of a step. [%]</summary>
    public static double LeftPercent(int step, double solid) =>
        step <= LastSolid(solid) ? 100 : 100 * Math.Clamp(1 - ((step - solid) / Fading), 0, 1);
}
