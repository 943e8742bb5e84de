using Silkwright.Coating.Learning;

namespace Silkwright.Records.Coating;

/// <summary>Experience that holds for a shop.</summary>
/// <param name="Kept">Who took it in, and when.</param>
/// <param name="Experience">What it tells.</param>
public sealed record HeldExperience(KeptExperience Kept, CoatExperience Experience);
