namespace Silkwright.Choosing;

/// <summary>Choices held against each other with everything they are uncertain of.</summary>
public sealed record Comparison
{
    /// <summary>Least expected cost first.</summary>
    public required IReadOnlyList<Standing> Standings { get; init; }

    /// <summary>The choice whose worst regret is least (minimax regret).</summary>
    public required string Robust { get; init; }

    /// <summary>The amount whose knowing would save most; none where the choice is clear or nothing alone would settle it.</summary>
    public Settling? Settles { get; init; }

    /// <summary>The choice of least expected cost.</summary>
    public string Expected => Standings[0].Id;

    /// <summary>Another choice costs less in more than one draw of ten.</summary>
    public bool IsClose => Standings[0].ChanceBestPercent < 90;
}
