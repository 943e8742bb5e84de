namespace Silkwright.Light;

/// <summary>A lamp's light at the glass out of what is known of the lamp.</summary>
public static class EdgeLamp
{
    /// <param name="shape">What it is.</param>
    /// <param name="halfAngleDegrees">Half angle of its light; none: from distance and source, or the usual one. [degrees]</param>
    /// <param name="distanceMm">Lamp to glass. [mm]</param>
    /// <param name="sourceMm">Width of a point lamp. [mm]</param>
    /// <param name="pitchMm">Diode to diode. [mm]</param>
    public static LampLight Of(LampShape shape, double? halfAngleDegrees, double? distanceMm, double? sourceMm, double? pitchMm)
    {
        var light = shape switch
        {
            LampShape.Straight => LampLight.Collimated,
            LampShape.Tubes => LampLight.Tubes(),
            LampShape.Diodes => distanceMm is { } distance && pitchMm is { } pitch ? LampLight.Diodes(distance, pitch) : new LampLight { HalfAngleDegrees = LampLight.UsualDiodesDegrees },
            _ => distanceMm is { } far && sourceMm is { } wide ? LampLight.Point(far, wide) : new LampLight { HalfAngleDegrees = LampLight.UsualPointDegrees },
        };
        return halfAngleDegrees is { } given ? light with { HalfAngleDegrees = given } : light;
    }
}
