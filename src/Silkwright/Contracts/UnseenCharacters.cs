namespace Silkwright.Contracts;

/// <summary>Characters that a terminal obeys instead of showing.</summary>
public static class UnseenCharacters
{
    /// <summary>Control characters, and those that turn the reading direction (Unicode Standard Annex 9, explicit formatting).</summary>
    public static bool Are(char c) => char.IsControl(c) || c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
