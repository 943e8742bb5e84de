namespace Silkwright.Film.TestFilms;

/// <summary>Radius of a round dot of a given tone in a square cell of side 1.</summary>
/// <remarks>
/// Up to π/4 the dot lies inside its cell: a = π r². Above, its four neighbours overlap it and only what lies inside the cell counts:
/// a = π r² − 4 (r² acos(1/2r) − ½ √(r² − ¼)), circular segments cut off by the cell's sides (plane geometry).
/// </remarks>
internal static class RoundDot
{
    private const int Steps = 4096;
    private static readonly double[] Radii = Table();

    /// <summary>[1], from 0 to √½ cell sides.</summary>
    public static double Radius(double tone) => Radii[(int)Math.Round(Math.Clamp(tone, 0, 1) * Steps)];

    /// <summary>Share of the cell inside a dot of radius <paramref name="r"/>.</summary>
    public static double Tone(double r) => r <= 0.5
        ? Math.PI * r * r
        : (Math.PI * r * r) - (4 * ((r * r * Math.Acos(0.5 / r)) - (0.5 * Math.Sqrt((r * r) - 0.25))));

    private static double[] Table()
    {
        var radii = new double[Steps + 1];
        for (var i = 0; i <= Steps; i++)
        {
            var (low, high) = (0.0, Math.Sqrt(0.5));
            for (var k = 0; k < 50; k++)
            {
                var middle = (low + high) / 2;
                (low, high) = Tone(middle) < (double)i / Steps ? (middle, high) : (low, middle);
            }

            radii[i] = (low + high) / 2;
        }

        return radii;
    }
}
