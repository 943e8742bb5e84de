namespace Silkwright.Scheduling.Shelf;

/// <summary>What is known of every shelf that would beat the best one found.</summary>
internal enum Fixed
{
    /// <summary>May be kept or not.</summary>
    Free,

    /// <summary>Kept by every better shelf.</summary>
    Kept,

    /// <summary>On no better shelf.</summary>
    Dropped,
}
