namespace Silkwright.Exposure;

/// <summary>One strip of a step test on this lamp, this emulsion and this kind of mesh.</summary>
/// <param name="Amount">Exposure in seconds or in the machine's units. Above 0.</param>
/// <param name="SolidStep">Last step of the wedge that stayed fully hard. 0 to 41; 0 where none did.</param>
/// <param name="SqueegeeSideSoft">The squeegee side came out soft or slimy.</param>
/// <param name="FinestLineUm">Finest printed line the strip held. [µm]</param>
/// <param name="FinestGapUm">Finest gap the strip held. [µm]</param>
/// <param name="Damp">The strip may not have been dry: it teaches nothing.</param>
public sealed record StepTest(
    double Amount,
    int? SolidStep = null,
    bool? SqueegeeSideSoft = null,
    double? FinestLineUm = null,
    double? FinestGapUm = null,
    bool Damp = false)
{
    /// <summary>When it was made; strips of one day are one test.</summary>
    public DateOnly? On { get; init; }

    /// <summary>Hours on the lamp then. [h]</summary>
    public double? LampHours { get; init; }

    /// <summary>Batch of the emulsion.</summary>
    public string? Batch { get; init; }

    /// <summary>Since the emulsion was sensitised. [days]</summary>
    public double? SensitiserDays { get; init; }

    /// <summary>Where the screen dried. [%]</summary>
    public double? HumidityPercent { get; init; }

    /// <summary>Dry emulsion over mesh of this strip, measured. [µm]</summary>
    public double? EomUm { get; init; }

    /// <summary>What is left of the coat, where light alone decides: an under-exposed strip, washed from behind. [µm]</summary>
    public double? CuredDepthUm { get; init; }
}
