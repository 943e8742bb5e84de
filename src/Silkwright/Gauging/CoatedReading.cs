namespace Silkwright.Gauging;

/// <summary>An emulsion over mesh with who made it how, for the control chart.</summary>
/// <param name="On">When it was coated or read.</param>
/// <param name="EomUm">[µm]</param>
public sealed record CoatedReading(DateOnly On, double EomUm)
{
    public string? Operator { get; init; }

    public string? Trough { get; init; }

    public string? Emulsion { get; init; }

    public string? Lot { get; init; }

    /// <summary>Mesh and strokes in one word: only readings of one recipe are held against each other.</summary>
    public string Recipe { get; init; } = "";

    public string? Screen { get; init; }
}
