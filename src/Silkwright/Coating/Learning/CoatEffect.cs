namespace Silkwright.Coating.Learning;

/// <summary>How much more or less of a coat one group lays than its like.</summary>
/// <param name="Group">shop, operator, trough, recipe, emulsion or mesh.</param>
/// <param name="Name">Which.</param>
/// <param name="EomUm">More (or less) at the mean thickness of all readings. [µm]</param>
/// <param name="StandardErrorUm">[µm]</param>
public sealed record CoatEffect(string Group, string Name, double EomUm, double StandardErrorUm)
{
    /// <summary>The same by its own readings alone, all other effects taken off them: what it is drawn from. None where it has no readings here. [µm]</summary>
    public double? RawUm { get; init; }

    /// <summary>Readings it has here.</summary>
    public int Readings { get; init; }
}
