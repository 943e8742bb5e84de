namespace Silkwright.Exposure;

/// <summary>Preconditions of an exposure case.</summary>
internal static class ExposureChecks
{
    /// <summary>Wedges have 14 to 41 steps. Common practice, no source.</summary>
    private const int MostWedgeSteps = 41;

    internal static void Check(ExposureCase exposure)
    {
        Require(exposure.Mesh is { CountPerCm: > 0, ThreadUm: > 0 }, exposure.Mesh, "Mesh count and thread must be above 0.");
        Require(
            exposure.StencilUm is { Low: >= 0, Value: > 0, High: <= 2000 }, exposure.StencilUm.Value, "The stencil is up to 2000 µm thick.");
        Require(exposure.FinestLineUm is null or (> 0 and < 1e9), exposure.FinestLineUm, "The finest line must be above 0.");
        Require(exposure.FinestGapUm is null or (> 0 and < 1e9), exposure.FinestGapUm, "The finest gap must be above 0.");
        Require(exposure.Lamp.DistanceMm is null or (> 0 and < 1e5), exposure.Lamp.DistanceMm, "The lamp's distance must be above 0.");
        Require(exposure.Lamp.Hours is null or (>= 0 and < 1e6), exposure.Lamp.Hours, "Lamp hours must be 0 or more.");
        Require(exposure.Lamp.IrradianceMwPerCm2 is null or (> 0 and < 1e5), exposure.Lamp.IrradianceMwPerCm2, "The lamp's irradiance must be above 0.");
        Require(exposure.Lamp.PeakNm is null or (>= 200 and <= 700), exposure.Lamp.PeakNm, "The lamp's peak lies between 200 and 700 nm.");
        Require(exposure.Lamp.SpotUm is null or (>= 1 and <= 300), exposure.Lamp.SpotUm, "A spot is 1 to 300 µm wide.");
        Require(exposure.Lamp.Passes is null or (>= 1 and <= 100), exposure.Lamp.Passes, "Light is written 1 to 100 times.");
        Require(exposure.Lamp.BeamHalfAngleDegrees is null or (>= 0 and <= 75), exposure.Lamp.BeamHalfAngleDegrees, "The light's half angle lies between 0 and 75 degrees.");
        Require(exposure.Emulsion.CriticalDoseMjPerCm2 is null or (> 0 and < 1e6), exposure.Emulsion.CriticalDoseMjPerCm2, "The critical dose must be above 0.");
        Require(
            exposure.Emulsion.RelativeExposure is null or (> 0 and < 1e3),
            exposure.Emulsion.RelativeExposure,
            "The relative exposure must be above 0.");
        Require(
            exposure.Emulsion.PenetrationDepthUm is null or (>= 5 and < 1e4),
            exposure.Emulsion.PenetrationDepthUm,
            "The penetration depth must be 5 µm or more.");
        Require(exposure.Emulsion.BleachingPercent is null or (>= 0 and <= 100), exposure.Emulsion.BleachingPercent, "The share that bleaches lies between 0 and 100 %.");
        Require(exposure.Emulsion.BleachDoseMjPerCm2 is null or (> 0 and < 1e6), exposure.Emulsion.BleachDoseMjPerCm2, "The dose that bleaches must be above 0.");
        Require(
            exposure.Film is null or { DMinUv: >= 0 and <= 6, DMaxUv: >= 0 and <= 6 },
            exposure.Film,
            "Film densities lie between 0 and 6.");
        Require(
            exposure.Tests.All(strip => strip.Amount > 0 && double.IsFinite(strip.Amount)),
            exposure.Tests,
            "Every strip's exposure must be above 0.");
        Require(
            exposure.Tests.All(strip => strip.SolidStep is null or (>= 0 and <= MostWedgeSteps)),
            exposure.Tests,
            "A solid step lies between 0 and 41.");
    }

    private static void Require(bool holds, object? exposure, string message)
    {
        if (!holds)
            throw new ArgumentOutOfRangeException(nameof(exposure), exposure, message);
    }
}
