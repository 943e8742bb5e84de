namespace Silkwright.Drying;

/// <summary>Water that a material keeps in air of a given humidity (Guggenheim, Anderson, de Boer).</summary>
/// <param name="MonolayerPercent">Water of the first layer. [% of the dry material], above 0.</param>
/// <param name="C">How much more strongly the first layer is held. [1], above 0.</param>
/// <param name="K">The further layers beside liquid water. [1], above 0 and at most 1; at 1 this is the BET isotherm.</param>
/// <remarks>
/// docs/engines/drying.md, equation 8. Source: the GAB equation as used for film formers in J. Pharm. Sci. 99 (2010). The
/// parameters change little over a screen room's temperatures; that change is left out.
/// </remarks>
public sealed record GabIsotherm(double MonolayerPercent, double C, double K)
{
    /// <param name="waterActivity">Relative humidity as a share. [1], 0 to 1; below 1 where <see cref="K"/> is 1.</param>
    /// <returns>Moisture at rest. [% of the dry material]</returns>
    /// <exception cref="ArgumentOutOfRangeException">The activity lies outside its range.</exception>
    public double MoisturePercent(double waterActivity)
    {
        if (!(waterActivity >= 0 && waterActivity <= 1 && K * waterActivity < 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(waterActivity), waterActivity, "The water activity must lie between 0 and 1, and K times it below 1.");
        }

        var held = K * waterActivity;
        return MonolayerPercent * C * held / ((1 - held) * (1 - held + (C * held)));
    }
}
