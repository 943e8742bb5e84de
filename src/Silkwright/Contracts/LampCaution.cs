using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>What stands before every answer that ends at an exposure lamp.</summary>
public static class LampCaution
{
    public static Caution BeforeExposing { get; } = new(
        "Before exposing",
        "Ultraviolet and violet light burn eyes and skin. Keep the cover closed and the interlock working; the lamp's manual and local codes decide.",
        CautionLevel.Warning);
}
