namespace Silkwright.Estimates;

/// <summary>How bad it gets if nobody heeds the caution (pattern of ISO 3864 and ANSI Z535, from memory).</summary>
public enum CautionLevel
{
    /// <summary>Property, not people.</summary>
    Notice,

    /// <summary>May hurt a little.</summary>
    Caution,

    /// <summary>May hurt badly.</summary>
    Warning,
}
