namespace Silkwright.Exposure;

/// <summary>Light through a film of a density.</summary>
public static class FilmTransmission
{
    /// <param name="density">UV transmission density. [1], 0 or more.</param>
    /// <returns>Share of the light that passes, 10^-D. [1]</returns>
    public static double Of(double density) => Math.Pow(10, -density);

    /// <summary>Light under the film's black over light under its clear. [1]</summary>
    public static double Leak(FilmDensity film) => Of(film.DMaxUv - film.DMinUv);
}
