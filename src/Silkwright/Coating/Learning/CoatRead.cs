namespace Silkwright.Coating.Learning;

/// <summary>One reading of a coat.</summary>
/// <param name="Coat">What was read.</param>
/// <param name="EomUm">Emulsion over mesh. [µm], finite; a bare thread reads below 0 now and then.</param>
public sealed record CoatRead(CoatObservation Coat, double EomUm);
