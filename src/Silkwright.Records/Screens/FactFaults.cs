using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Records.Store;

namespace Silkwright.Records.Screens;

/// <summary>Values that no screen can have.</summary>
internal static class FactFaults
{
    public static void AddTo(ProblemList problems, string where, ScreenFact fact)
    {
        switch (fact)
        {
            case MeshTensioned f:
                Between(problems, where, "tension", f.TensionNPerCm, InputLimits.LeastTensionNPerCm, InputLimits.MostTensionNPerCm, "N/cm");
                break;
            case ScreenCoated f:
                Named(problems, where, "emulsion", f.EmulsionId);
                break;
            case ClimateRead f:
                Between(problems, where, "humidity", f.HumidityPercent, 0, 100, "%");
                if (f.Celsius is { } celsius)
                    Between(problems, where, "temperature", celsius, -20, 80, "°C");
                break;
            case ScreenExposed f:
                var (most, unit) = f.Counts == ExposureCount.Seconds
                    ? (InputLimits.MostExposureSeconds, "s")
                    : (InputLimits.MostExposureUnits, "units");
                Between(problems, where, "exposure", f.Amount, InputLimits.LeastExposure, most, unit);
                Step(problems, where, f.SolidStep);
                break;
            case ScreenChecked f:
                Step(problems, where, f.SolidStep);
                if (f.EomUm is { } eom)
                    Between(problems, where, "emulsion over mesh", eom, 0, InputLimits.MostEomUm, "µm");
                break;
            case JobAssigned f:
                Named(problems, where, "job", f.JobId);
                break;
            case ScreenPrinted f when f.Impressions is < 1 or > InputLimits.MostImpressions:
                problems.Add($"{f.Impressions} impressions cannot have been made.", where, $"Give how many were made since the last entry, 1 to {InputLimits.MostImpressions}.");
                break;
            case ScreenEnded { Reason: EndReason.Broke } f when string.IsNullOrWhiteSpace(f.How):
                problems.Add("How it broke is not said.", where, "Say in a few words what was seen: pinholes, a tear, edges gone.");
                break;
            default:
                break;
        }
    }

    private static void Named(ProblemList problems, string where, string what, string? name)
    {
        if (string.IsNullOrWhiteSpace(name) || name.Length > DocumentFaults.LongestText)
            problems.Add($"The {what} is not named.", where, $"Give the {what} as the shop calls it.");
    }

    private static void Step(ProblemList problems, string where, int? step)
    {
        if (step is < 1 or > InputLimits.MostWedgeSteps)
            problems.Add($"{step} is no step of the wedge.", where, $"Give the last solid step, 1 to {InputLimits.MostWedgeSteps}.");
    }

    private static void Between(ProblemList problems, string where, string what, double value, double low, double high, string unit)
    {
        if (!(value >= low && value <= high))
            problems.Add($"A {what} of {value} {unit} cannot be.", where, $"Give {low} to {high} {unit}.");
    }
}
