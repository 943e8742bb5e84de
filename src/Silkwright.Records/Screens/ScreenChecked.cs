namespace Silkwright.Records.Screens;

/// <summary>The developed stencil looked at on the light table; the checker is the entry's person.</summary>
/// <param name="Result">What was decided.</param>
/// <param name="SolidStep">Last step of the wedge that stayed fully hard. 1 to 21.</param>
/// <param name="EomUm">Emulsion over mesh as read on a gauge. [µm], 0 to 1000.</param>
public sealed record ScreenChecked(CheckResult Result, int? SolidStep = null, double? EomUm = null) : ScreenFact(ScreenEventKind.Checked);
