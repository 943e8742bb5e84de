namespace Silkwright.Light;

/// <summary>Directions of the light that falls on one place of the glass: a cone of even radiance about an axis.</summary>
/// <remarks>
/// The flux of even radiance through a flat surface is even over the disc of direction cosines, so a small far source, a bank of tubes and an array of
/// diodes are discs of different radius. docs/engines/light.md, equation 7.
/// </remarks>
public sealed record LampLight
{
    /// <summary>Half angle of a small far source with its reflector. Common practice. [degrees]</summary>
    public const double UsualPointDegrees = 5;

    /// <summary>Half angle of the light of a bank of tubes close to the glass. Common practice. [degrees]</summary>
    public const double UsualTubesDegrees = 60;

    /// <summary>Half angle of diodes with lenses. Common practice. [degrees]</summary>
    public const double UsualDiodesDegrees = 30;

    /// <summary>Half angle of the cone in air. [degrees], 0 to 90.</summary>
    public double HalfAngleDegrees { get; init; }

    /// <summary>Slant of the cone's axis across the edge, towards the image. [degrees] in air, −89 to 89.</summary>
    public double SlantDegrees { get; init; }

    /// <summary>Tangent from one source to the next where light comes from single sources in a square array; 0: from everywhere in the cone. [1]</summary>
    public double LatticeTangent { get; init; }

    /// <summary>Light that falls straight down.</summary>
    public static LampLight Collimated { get; } = new();

    /// <summary>A small source at a distance.</summary>
    /// <param name="distanceMm">Source to glass. [mm], above 0.</param>
    /// <param name="sourceMm">Width of the source, its reflector included. [mm], 0 or more.</param>
    /// <param name="offsetMm">How far to the side of the lamp's axis the place lies. [mm]</param>
    public static LampLight Point(double distanceMm, double sourceMm, double offsetMm = 0) => new()
    {
        HalfAngleDegrees = Degrees(Math.Atan(sourceMm / 2 / distanceMm)),
        SlantDegrees = Degrees(Math.Atan(offsetMm / distanceMm)),
    };

    /// <summary>A bank of tubes close to the glass: bright alike in all directions up to a half angle.</summary>
    public static LampLight Tubes(double halfAngleDegrees = UsualTubesDegrees) => new() { HalfAngleDegrees = halfAngleDegrees };

    /// <summary>An array of diodes whose lenses send light into a cone; a place is lit by all diodes within it.</summary>
    /// <param name="distanceMm">Array to glass. [mm], above 0.</param>
    /// <param name="pitchMm">Diode to diode. [mm], 0 or more.</param>
    /// <param name="halfAngleDegrees">Of the lenses. [degrees]</param>
    public static LampLight Diodes(double distanceMm, double pitchMm, double halfAngleDegrees = UsualDiodesDegrees) => new()
    {
        HalfAngleDegrees = halfAngleDegrees,
        LatticeTangent = pitchMm / distanceMm,
    };

    /// <summary>The whole cone comes from above the glass.</summary>
    public bool IsAboveGlass => Math.Sin(Math.Abs(SlantDegrees) * Math.PI / 180) + Math.Sin(HalfAngleDegrees * Math.PI / 180) <= 1 + 1e-9;

    private static double Degrees(double radians) => radians * 180 / Math.PI;
}
