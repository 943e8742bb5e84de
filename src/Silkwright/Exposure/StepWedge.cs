namespace Silkwright.Exposure;

/// <summary>Arithmetic of a transmission step wedge.</summary>
public static class StepWedge
{
    /// <summary>Density from one step to the next on the usual 21-step wedge. [1]. From memory, standard for the trade's wedges.</summary>
    public const double UsualDensityPerStep = 0.15;

    /// <summary>Density of the first step. [1]</summary>
    public const double FirstStepDensity = 0.05;

    /// <summary>Last solid step of a direct stencil that cured through. Common practice; fine halftone 5 to 6, long runs 8 to 9.</summary>
    public const double UsualSolidStep = 7;

    /// <summary>Light of one step over the next. [1]; 1.4125, where the trade reckons with the square root of 2.</summary>
    public static double FactorPerStep(double densityPerStep = UsualDensityPerStep) => Math.Pow(10, densityPerStep);

    /// <summary>Exposure that moves the last solid step from where it was seen to where it should be.</summary>
    /// <param name="amount">Exposure given, in seconds or in the machine's units. Above 0.</param>
    /// <param name="observedStep">Last step that stayed fully hard.</param>
    /// <param name="targetStep">Step that should.</param>
    /// <param name="densityPerStep">[1], above 0.</param>
    /// <returns>In the unit of <paramref name="amount"/>: docs/engines/exposure.md, equation 3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Amount or density per step not above 0, or a step not finite.</exception>
    public static double CorrectedAmount(
        double amount, double observedStep, double targetStep, double densityPerStep = UsualDensityPerStep)
    {
        if (!(amount > 0) || !double.IsFinite(amount))
            throw new ArgumentOutOfRangeException(nameof(amount), amount, "An exposure must be above 0.");
        if (!(densityPerStep > 0) || !double.IsFinite(densityPerStep))
            throw new ArgumentOutOfRangeException(nameof(densityPerStep), densityPerStep, "The density per step must be above 0.");
        if (!double.IsFinite(observedStep) || !double.IsFinite(targetStep))
            throw new ArgumentOutOfRangeException(nameof(observedStep), observedStep, "Steps must be finite numbers.");
        return amount * Math.Pow(10, densityPerStep * (targetStep - observedStep));
    }

    /// <summary>Density of a step. [1]</summary>
    /// <param name="step">Counted from 1.</param>
    /// <param name="densityPerStep">[1]</param>
    public static double DensityOf(double step, double densityPerStep = UsualDensityPerStep) =>
        FirstStepDensity + (densityPerStep * (step - 1));
}
