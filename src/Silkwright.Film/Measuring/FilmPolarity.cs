namespace Silkwright.Film.Measuring;

/// <summary>What prints.</summary>
public enum FilmPolarity
{
    /// <summary>Black prints.</summary>
    Positive,

    /// <summary>Clear prints.</summary>
    Negative,
}
