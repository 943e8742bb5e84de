namespace Silkwright.Coating;

/// <summary>What the balance of volumes expects of a coat, and how far that moves for one standard deviation of what it rests on.</summary>
/// <param name="EomUm">Emulsion over mesh. [µm]</param>
/// <param name="Constants">Moves with each constant that is the same in every shop. [µm], signed</param>
/// <param name="MeshUm">Move with the voids of the mesh. [µm], 0 or more.</param>
/// <param name="EmulsionUm">Move with the solids and the density of the emulsion. [µm], 0 or more.</param>
internal sealed record CoatSlopes(double EomUm, IReadOnlyList<double> Constants, double MeshUm, double EmulsionUm)
{
    /// <summary>What the balance expects with each constant so many standard deviations off what is believed of it. [µm]</summary>
    public required Func<IReadOnlyList<double>, double> WithConstants { get; init; }
}
