using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Screens;

/// <summary>Values that no screen can have.</summary>
internal static class FactFaults
{
    /// <summary>Textile mesh is stretched to 35 N/cm; twice that tears it. Common practice, no source. [N/cm]</summary>
    private const double MostTensionNPerCm = 60;

    /// <summary>Steps of the usual wedge.</summary>
    private const int WedgeSteps = 21;

    /// <summary>Thickest stencils, for high-density prints, come near 700 µm. Common practice, no source. [µm]</summary>
    private const double MostEomUm = 1000;

    /// <summary>The longest lives told of are far below this; more is a slip of the finger.</summary>
    private const long MostImpressions = 10_000_000;

    public static void AddTo(ProblemList problems, string where, ScreenFact fact)
    {
        switch (fact)
        {
            case MeshTensioned f:
                Between(problems, where, "tension", f.TensionNPerCm, 0, MostTensionNPerCm, "N/cm", lowIsFine: false);
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
                if (!(f.Amount > 0 && double.IsFinite(f.Amount)))
                    problems.Add("The exposure is not above 0.", where, "Give seconds, or the machine's own units.");
                Step(problems, where, f.SolidStep);
                break;
            case ScreenChecked f:
                Step(problems, where, f.SolidStep);
                if (f.EomUm is { } eom)
                    Between(problems, where, "emulsion over mesh", eom, 0, MostEomUm, "µm");
                break;
            case JobAssigned f:
                Named(problems, where, "job", f.JobId);
                break;
            case ScreenPrinted f when f.Impressions is < 1 or > MostImpressions:
                problems.Add($"{f.Impressions} impressions cannot have been made.", where, $"Give how many were made since the last entry, 1 to {MostImpressions}.");
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
        if (step is < 1 or > WedgeSteps)
            problems.Add($"{step} is no step of the wedge.", where, $"Give the last solid step, 1 to {WedgeSteps}.");
    }

    private static void Between(
        ProblemList problems, string where, string what, double value, double low, double high, string unit, bool lowIsFine = true)
    {
        if (!(value <= high && (value > low || (lowIsFine && value == low))))
            problems.Add($"A {what} of {value} {unit} cannot be.", where, $"Give {(lowIsFine ? "" : "above ")}{low} to {high} {unit}.");
    }
}
