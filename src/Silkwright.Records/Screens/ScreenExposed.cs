using Silkwright.Exposure;

namespace Silkwright.Records.Screens;

/// <summary>Exposed.</summary>
/// <param name="Amount">Seconds or the machine's own units. Above 0.</param>
/// <param name="Counts">Which of the two.</param>
/// <param name="SolidStep">Last step of the wedge that stayed fully hard, once developed. 1 to 21.</param>
/// <param name="LampId">As the shop's document calls it.</param>
public sealed record ScreenExposed(double Amount, ExposureCount Counts, int? SolidStep = null, string? LampId = null) : ScreenFact(ScreenEventKind.Exposed);
