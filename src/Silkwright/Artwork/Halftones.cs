namespace Silkwright.Artwork;

/// <summary>Arithmetic of round halftone dots on a square lattice.</summary>
public static class Halftones
{
    /// <summary>Diameter of a round dot that gives a tone, as long as dots stay apart.</summary>
    /// <param name="rulingLpi">Ruling. [1/in], above 0.</param>
    /// <param name="tonePercent">Tone. [%], 0 to 78 (there round dots touch).</param>
    /// <returns>[µm]</returns>
    /// <remarks>Area of the dot over area of its cell: tone = (π/4) D² L². Geometry.</remarks>
    public static double DotDiameterUm(double rulingLpi, double tonePercent) =>
        25_400 / rulingLpi * Math.Sqrt(4 * tonePercent / 100 / Math.PI);

    /// <summary>Tone of a round dot of a diameter: the inverse of <see cref="DotDiameterUm"/>.</summary>
    /// <param name="rulingLpi">Ruling. [1/in], above 0.</param>
    /// <param name="diameterUm">Diameter. [µm], 0 or more.</param>
    /// <returns>[%]</returns>
    public static double TonePercent(double rulingLpi, double diameterUm)
    {
        var share = diameterUm * rulingLpi / 25_400;
        return 100 * Math.PI / 4 * share * share;
    }
}
