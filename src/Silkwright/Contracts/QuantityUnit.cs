namespace Silkwright.Contracts;

/// <summary>A unit as people write it, and what it is.</summary>
/// <param name="Spelling">How it is listed to people: <c>um</c>, <c>/in</c>.</param>
/// <param name="Unit">The same as a member of one of UnitsNet's unit enumerations.</param>
/// <param name="AlsoWritten">Other spellings taken, without listing them.</param>
public sealed record QuantityUnit(string Spelling, Enum Unit, params string[] AlsoWritten)
{
    /// <summary>Whether people may mean this unit by <paramref name="written"/> (plain letters, any case).</summary>
    public bool IsWritten(string written) =>
        AlsoWritten.Prepend(Spelling).Contains(written, StringComparer.OrdinalIgnoreCase);
}
