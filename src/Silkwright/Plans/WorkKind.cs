namespace Silkwright.Plans;

/// <summary>Typical kinds of work, for when nobody has a film or a ruler at hand.</summary>
public enum WorkKind
{
    LeftChestSpot,
    FullFrontSpot,
    FullFrontHalftone,
    AthleticNumbers,
    FineLettering,
    LargeSolid,
}
