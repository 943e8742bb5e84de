namespace Silkwright.Ink;

/// <summary>Wet and dry layers of anything that dries by losing volume.</summary>
/// <remarks>docs/engines/ink.md, equations 3 and 4. Definitions; no shrinkage beyond the volume that leaves.</remarks>
public static class InkFilm
{
    /// <summary>Dry layer. [µm]</summary>
    /// <param name="wetUm">Wet layer. [µm], 0 or more.</param>
    /// <param name="volumeSolidsPercent">Solids by volume. [%], above 0 to 100.</param>
    public static double DryUm(double wetUm, double volumeSolidsPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(wetUm);
        return wetUm * ShareOf(volumeSolidsPercent);
    }

    /// <summary>Wet layer that dries to the given one. [µm]</summary>
    /// <param name="dryUm">Dry layer. [µm], 0 or more.</param>
    /// <param name="volumeSolidsPercent">Solids by volume. [%], above 0 to 100.</param>
    public static double WetUm(double dryUm, double volumeSolidsPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(dryUm);
        return dryUm / ShareOf(volumeSolidsPercent);
    }

    /// <summary>Area that one litre covers. [m²/L]</summary>
    /// <param name="wetUm">Wet layer. [µm], positive.</param>
    public static double SpreadingRateM2PerL(double wetUm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wetUm);
        return 1000 / wetUm;
    }

    private static double ShareOf(double volumeSolidsPercent) => volumeSolidsPercent is > 0 and <= 100
        ? volumeSolidsPercent / 100
        : throw new ArgumentOutOfRangeException(
            nameof(volumeSolidsPercent), volumeSolidsPercent, "Solids by volume lie above 0 and at most at 100 %.");
}
