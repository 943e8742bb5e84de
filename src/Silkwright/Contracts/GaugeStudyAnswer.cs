using Silkwright.Gauging;

namespace Silkwright.Contracts;

/// <summary>A study and the file it came from.</summary>
/// <param name="Kind">What was studied: coated, eom or bare.</param>
/// <param name="Study">The figures.</param>
/// <param name="Pairs">Screens that were read bare and coated.</param>
/// <param name="File">The file, with what was flagged and given back.</param>
public sealed record GaugeStudyAnswer(string Kind, GaugeStudy Study, IReadOnlyList<(string Screen, BarePairing Pairing)> Pairs, GaugeFile File);
