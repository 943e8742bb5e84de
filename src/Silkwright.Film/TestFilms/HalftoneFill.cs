namespace Silkwright.Film.TestFilms;

/// <summary>A halftone of round dots whose tone runs from one place to another.</summary>
/// <param name="RulingLpi">[1/in]</param>
/// <param name="AngleDegrees">From the film's horizontal, counter-clockwise. [degrees]</param>
/// <param name="FromPercent">Tone at the start. [%]</param>
/// <param name="ToPercent">Tone at the end. [%]</param>
/// <param name="Along">Start x, y and end x, y of a straight run, or centre x, y and two radii of a round one. [mm]</param>
/// <param name="Radial">The run is round.</param>
public sealed record HalftoneFill(
    double RulingLpi, double AngleDegrees, double FromPercent, double ToPercent, IReadOnlyList<double> Along, bool Radial)
{
    /// <summary>Tone at a place. [1], 0 to 1</summary>
    public double Tone(double xMm, double yMm)
    {
        double share;
        if (Radial)
        {
            share = (Math.Sqrt(Square(xMm - Along[0]) + Square(yMm - Along[1])) - Along[2]) / (Along[3] - Along[2]);
        }
        else
        {
            var (dx, dy) = (Along[2] - Along[0], Along[3] - Along[1]);
            share = (((xMm - Along[0]) * dx) + ((yMm - Along[1]) * dy)) / (Square(dx) + Square(dy));
        }

        return (FromPercent + ((ToPercent - FromPercent) * Math.Clamp(share, 0, 1))) / 100;
    }

    private static double Square(double value) => value * value;
}
