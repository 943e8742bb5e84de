namespace Silkwright.Exposure;

/// <summary>Arithmetic of a transmission step wedge.</summary>
public static class StepWedge
{
    public static double CorrectedAmount(double amount, double observedStep, double targetStep, double densityPerStep = 0.15) =>
        throw new NotImplementedException();
}
