namespace Silkwright.Gauging;

/// <summary>A reading that does not go with the others of its part and operator. It is flagged, and stays in the figures.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="OffUm">How far it lies from what part and operator make expected, itself left out. [µm]</param>
/// <param name="Studentised">The same in its own standard deviations, worse ones left out before.</param>
/// <param name="Chance">Chance that the worst of as many sound readings is that far off. [1]</param>
public sealed record StudyOutlier(StudyReading Reading, double OffUm, double Studentised, double Chance);
