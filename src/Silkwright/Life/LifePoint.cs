namespace Silkwright.Life;

/// <summary>One point of a life curve.</summary>
/// <param name="Impressions">Impressions made.</param>
/// <param name="SoundPercent">Stencils still sound. [%]</param>
/// <param name="LowPercent">Lower end. [%]</param>
/// <param name="HighPercent">Upper end. [%]</param>
public sealed record LifePoint(double Impressions, double SoundPercent, double LowPercent, double HighPercent);
