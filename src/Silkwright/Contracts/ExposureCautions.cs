using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Stands before every exposure.</summary>
public static class ExposureCautions
{
    public static readonly Caution BeforeExposing = new(
        "Before exposing",
        "Ultraviolet and violet light burn eyes and skin. Keep the cover closed and the interlock working; the lamp's manual and local codes decide.",
        CautionLevel.Warning);
}
