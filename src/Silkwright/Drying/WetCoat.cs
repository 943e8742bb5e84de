namespace Silkwright.Drying;

/// <summary>A coat with every uncertain figure settled.</summary>
/// <param name="Periods">How it dries.</param>
/// <param name="StartMoisture">Water when the last stroke is done. [kg/kg dry]</param>
internal sealed record WetCoat(DryingPeriods Periods, double StartMoisture);
