namespace Silkwright.Records.Screens;

/// <summary>Air read where the screen stands.</summary>
/// <param name="HumidityPercent">Relative humidity. [%], 0 to 100.</param>
/// <param name="Celsius">Temperature. [°C], -20 to 80.</param>
/// <param name="Place">Room or cabinet.</param>
public sealed record ClimateRead(double HumidityPercent, double? Celsius = null, string? Place = null) : ScreenFact(ScreenEventKind.Climate);
