using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Light;

/// <summary>
/// What coats and threads do with light of 365 to 405 nm where nobody has measured: all of it common practice without a source, and wide. Nobody has published the coefficients of real coats.
/// </summary>
/// <remarks>
/// Absorption of coats is half way through bleaching, so that it agrees with the penetration depths of docs/engines/exposure.md; scattering is of dispersed polymer of about light's wavelength,
/// forward. Threads of polyester are clear above 330 nm; dye leaves a thread of 40 µm between a tenth and two thirds of the light.
/// </remarks>
public static class UsualOptics
{
    /// <summary>Dry coat of polyvinyl alcohol. From memory: 1.50 to 1.53. [1]</summary>
    public static Estimate CoatIndex { get; } = new(1.52, 1.50, 1.53, Ground.CommonPractice);

    /// <summary>Polyester fibre, mean over its directions: it is doubly refracting, about 1.54 across and 1.72 along. From memory. [1]</summary>
    public static Estimate ThreadIndex { get; } = new(1.63, 1.58, 1.66, Ground.CommonPractice);

    /// <summary>[1/cm]</summary>
    public static Estimate CoatAbsorption(EmulsionFamily family) => Estimate.WithinFactor(
        family switch
        {
            EmulsionFamily.DualCure or EmulsionFamily.CapillaryFilm => 118,
            EmulsionFamily.Diazo or EmulsionFamily.Photopolymer => 143,
            _ => throw new ArgumentOutOfRangeException(nameof(family), family, "Unknown family."),
        },
        2, Ground.CommonPractice);

    /// <summary>[1/cm]</summary>
    public static Estimate CoatScattering(EmulsionFamily family) => Estimate.WithinFactor(
        family switch
        {
            EmulsionFamily.Diazo => 250,
            EmulsionFamily.DualCure or EmulsionFamily.CapillaryFilm => 300,
            EmulsionFamily.Photopolymer => 350,
            _ => throw new ArgumentOutOfRangeException(nameof(family), family, "Unknown family."),
        },
        2.5, Ground.CommonPractice);

    /// <summary>Mean cosine of scattering in a coat. [1]</summary>
    public static Estimate CoatAnisotropy { get; } = new(0.85, 0.7, 0.93, Ground.CommonPractice);

    /// <summary>[1/cm]</summary>
    public static Estimate ThreadAbsorption(bool dyed) => dyed ? new(300, 100, 600, Ground.CommonPractice) : new(3, 1, 10, Ground.CommonPractice);

    /// <summary>[1/cm]</summary>
    public static Estimate ThreadScattering { get; } = new(50, 10, 200, Ground.CommonPractice);

    /// <summary>Mean cosine of scattering in a thread. [1]</summary>
    public static Estimate ThreadAnisotropy { get; } = new(0.8, 0.6, 0.9, Ground.CommonPractice);

    /// <summary>Share of light that a black blanket throws back. [1]</summary>
    public static Estimate BlackBlanket { get; } = new(0.05, 0.02, 0.08, Ground.CommonPractice);

    /// <summary>Air that stays between film and coat under good vacuum. [µm]</summary>
    public static Estimate GapUm { get; } = new(10, 4, 20, Ground.CommonPractice);

    /// <summary>Coat over the mesh on the squeegee side. [µm]</summary>
    public static Estimate SqueegeeSideUm { get; } = new(3, 1, 6, Ground.CommonPractice);

    /// <summary>A coat by its family, at the best values.</summary>
    public static TurbidMedium Coat(EmulsionFamily family) =>
        new(CoatIndex.Value, CoatAbsorption(family).Value, CoatScattering(family).Value, CoatAnisotropy.Value);

    /// <summary>A thread, white or dyed, at the best values.</summary>
    public static TurbidMedium Thread(bool dyed) =>
        new(ThreadIndex.Value, ThreadAbsorption(dyed).Value, ThreadScattering.Value, ThreadAnisotropy.Value);
}
