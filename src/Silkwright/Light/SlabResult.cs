namespace Silkwright.Light;

/// <summary>Where the light of a beam on layers ends, as shares of the beam. [1]</summary>
public sealed record SlabResult
{
    /// <summary>Thrown back by the first surface without having entered; exact.</summary>
    public required double SpecularReflectance { get; init; }

    /// <summary>Come back out of the layers above.</summary>
    public required double DiffuseReflectance { get; init; }

    /// <summary>Come out below, scattered or not.</summary>
    public required double TotalTransmittance { get; init; }

    /// <summary>Come out below without having been scattered.</summary>
    public required double UnscatteredTransmittance { get; init; }

    /// <summary>Absorbed in each layer, from above to below.</summary>
    public required IReadOnlyList<double> AbsorbedByLayer { get; init; }

    /// <summary>Given to or taken from the rest by ending weak photons by lot; its mean is nothing.</summary>
    public required double Roulette { get; init; }

    /// <summary>Standard error of <see cref="DiffuseReflectance"/>.</summary>
    public required double DiffuseReflectanceError { get; init; }

    /// <summary>Standard error of <see cref="TotalTransmittance"/>.</summary>
    public required double TotalTransmittanceError { get; init; }

    /// <summary>Standard error of <see cref="UnscatteredTransmittance"/>.</summary>
    public required double UnscatteredTransmittanceError { get; init; }

    /// <summary>Standard error of what is absorbed in all layers together.</summary>
    public required double AbsorbedError { get; init; }

    public required long Photons { get; init; }

    /// <summary>Absorbed in all layers together.</summary>
    public double Absorbed => AbsorbedByLayer.Sum();
}
