namespace Silkwright.Exposure;

/// <summary>What a lamp's shape and distance do to its light.</summary>
public static class LampGeometry
{
    /// <summary>A lamp near a point, so that the inverse square holds.</summary>
    public static bool IsNearPoint(LampKind kind) => kind is LampKind.MetalHalide or LampKind.Halogen;

    /// <summary>Nearer to the glass no such lamp stands: there its arc and mirror are no point any more. [mm]. Common practice, no source.</summary>
    public static double LeastDistanceMm(LampKind kind) => kind switch
    {
        LampKind.MetalHalide => 200,
        LampKind.Halogen => 100,
        _ => 1,
    };

    /// <summary>Farther from the glass no lamp stands. [mm]. Common practice, no source.</summary>
    public const double MostDistanceMm = 10_000;

    /// <summary>Exposure at another distance over the exposure now.</summary>
    /// <param name="kind">Lamps near a point only; arrays and tube banks get a refusal.</param>
    /// <param name="fromMm">Lamp to glass now. [mm], above 0.</param>
    /// <param name="toMm">Lamp to glass then. [mm], above 0.</param>
    /// <returns>(to/from)²: docs/engines/exposure.md, equation 4.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A distance is not above 0.</exception>
    public static DistanceScaling AtDistance(LampKind kind, double fromMm, double toMm)
    {
        if (!(fromMm > 0) || !double.IsFinite(fromMm))
            throw new ArgumentOutOfRangeException(nameof(fromMm), fromMm, "A lamp's distance must be above 0.");
        if (!(toMm > 0) || !double.IsFinite(toMm))
            throw new ArgumentOutOfRangeException(nameof(toMm), toMm, "A lamp's distance must be above 0.");
        return IsNearPoint(kind)
            ? new DistanceScaling(toMm / fromMm * (toMm / fromMm))
            : new DistanceScaling(
                null,
                "The inverse square does not hold for an array or a tube bank near the glass: make a step test at the new distance.");
    }

    /// <summary>Light of a flat emitter at an angle off its axis over the light on it, on a plane across the axis.</summary>
    /// <param name="degrees">Off the axis. [degrees], 0 to 90.</param>
    /// <returns>cos⁴: docs/engines/exposure.md, equation 5. [1]</returns>
    public static double CosineFourth(double degrees) => Math.Pow(Math.Cos(degrees * Math.PI / 180), 4);

    /// <summary>Half angle of an even cone in place of the light that reaches a point of the glass. [degrees]. Common practice; of arrays and tubes calibrated: docs/engines/exposure.md, "Calibration".</summary>
    public static double HalfAngleDegrees(LampKind kind) => kind switch
    {
        LampKind.MetalHalide => 5,
        LampKind.Halogen => 8,
        LampKind.LedArray => 15,
        LampKind.TubeBank => 40,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown lamp."),
    };
}
