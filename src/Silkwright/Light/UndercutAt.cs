namespace Silkwright.Light;

/// <summary>How far under the black the dose reaches a share of the clear film's.</summary>
/// <param name="Share">Dose over that under clear film at the same depth. [1], above 0 and below 1.</param>
/// <param name="UndercutUm">Beyond the film's edge; below 0: short of it. On the print side, the mean over the weave. [µm]</param>
/// <param name="FarthestUm">
/// The same at the depth where it reaches farthest, for one dose all through: the share of the clear film's dose on the print side. This is how far a gap has closed. [µm]
/// </param>
/// <param name="SawtoothUm">
/// From tooth to tooth as the phase of the weave changes: the height, crest to trough, of a sine that scatters as much; what chance scatters is taken off. [µm]
/// </param>
public sealed record UndercutAt(double Share, Sampled UndercutUm, Sampled FarthestUm, Sampled SawtoothUm);
