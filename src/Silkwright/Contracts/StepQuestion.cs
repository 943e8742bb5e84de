using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>What <c>expose step</c> asks for.</summary>
public static class StepQuestion
{
    public static readonly QuantityField Seconds = new("seconds", QuantityKind.Time, "exposure the strip had, in time; or give --units")
    {
        Least = InputLimits.LeastExposure,
        Most = InputLimits.MostExposureSeconds,
    };

    public static readonly QuantityField Units = new(
        "units", QuantityKind.Number, "exposure the strip had, in the machine's own integrator units; never converted to time")
    {
        Sample = "60",
        Least = InputLimits.LeastExposure,
        Most = InputLimits.MostExposureUnits,
    };

    public static readonly QuantityField Observed = new("observed", QuantityKind.Number, "last step of the wedge that stayed fully hard")
    {
        Sample = "5",
        Required = true,
        Least = 1,
        Most = InputLimits.MostWedgeSteps,
    };

    public static readonly QuantityField Target = new("target", QuantityKind.Number, "the step that should be the last solid one; 7 is usual")
    {
        Sample = "7",
        Required = true,
        Least = 1,
        Most = InputLimits.MostWedgeSteps,
    };

    public static readonly QuantityField DensityPerStep = new("density-per-step", QuantityKind.Number, "density from step to step of the wedge; 0.15 when not given")
    {
        Sample = "0.15",
        Least = InputLimits.LeastDensityPerStep,
        Most = InputLimits.MostDensityPerStep,
    };

    public static IReadOnlyList<QuestionField> Fields => [Seconds, Units, Observed, Target, DensityPerStep];

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static StepCorrection Answer(GivenTexts given)
    {
        var (amount, counts) = ReadAmount(given);
        var observed = given.ReadRequired(Observed);
        var target = given.ReadRequired(Target);
        var density = given.Read(DensityPerStep) ?? StepWedge.UsualDensityPerStep;
        given.ThrowIfAny();
        return new StepCorrection(
            counts, amount, StepWedge.CorrectedAmount(amount, observed, target, density), observed, target, density);
    }

    /// <summary>An exposure in seconds or in the machine's units; faults stay in <paramref name="given"/>.</summary>
    public static (double Amount, ExposureCount Counts) ReadAmount(GivenTexts given)
    {
        given.NotBoth(Seconds, Units);
        if (!given.Has(Seconds) && !given.Has(Units))
        {
            given.Problems.Add(
                "The exposure of the strip is missing.", given.Where(Seconds),
                $"Add {given.Where(Seconds)} 60s, or {given.Where(Units)} 120 where the machine counts units of its own.");
        }

        var seconds = given.Read(Seconds);
        var units = given.Read(Units);
        return (seconds ?? units ?? double.NaN, seconds is null ? ExposureCount.Units : ExposureCount.Seconds);
    }
}
