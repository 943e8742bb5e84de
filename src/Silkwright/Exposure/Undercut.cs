namespace Silkwright.Exposure;

/// <summary>How far light gets under the film's edge.</summary>
public static class Undercut
{
    /// <summary>Refractive index of film carrier and coat. [1]. From memory: 1.5 for polyvinyl alcohol and polyester alike.</summary>
    public const double RefractiveIndex = 1.5;

    /// <summary>By slanting light over the way between the film's image and the coat, per edge.</summary>
    /// <param name="gapUm">Image to coat. [µm], 0 or more.</param>
    /// <param name="halfAngleDegrees">Of the light in air. [degrees], 0 up to below 90.</param>
    /// <returns>[µm]; gap·tan θ′ with sin θ′ = sin θ/1.5: docs/engines/exposure.md, equation 6.</returns>
    public static double ByAngleUm(double gapUm, double halfAngleDegrees) =>
        gapUm * Math.Tan(Math.Asin(Math.Sin(halfAngleDegrees * Math.PI / 180) / RefractiveIndex));

    /// <summary>By scatter in coat and mesh, per edge.</summary>
    /// <param name="scatterUm">Length over which scattered light falls by e. [µm], above 0.</param>
    /// <param name="logExcess">Natural logarithm of the dose at the open surface over the dose that just cures it.</param>
    /// <returns>
    /// [µm], growing with dose: an exponential line spread leaves half the dose at the edge and e less for each scatter length;
    /// docs/engines/exposure.md, equation 7. Below 0 the edge draws back from the film's.
    /// </returns>
    public static double ByScatterUm(double scatterUm, double logExcess) => scatterUm * (logExcess - Math.Log(2));
}
