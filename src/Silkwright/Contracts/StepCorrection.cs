using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>An exposure corrected by a step wedge.</summary>
/// <param name="Counts">Seconds, or the machine's own units.</param>
/// <param name="Given">The exposure the strip had. Above 0.</param>
/// <param name="Corrected">The exposure that should bring the target step.</param>
/// <param name="ObservedStep">Last solid step seen.</param>
/// <param name="TargetStep">Last solid step wanted.</param>
/// <param name="DensityPerStep">Density from one step of the wedge to the next. [1]</param>
public sealed record StepCorrection(
    ExposureCount Counts, double Given, double Corrected, double ObservedStep, double TargetStep, double DensityPerStep);
