namespace Silkwright.Contracts;

/// <summary>One record of a separated text.</summary>
/// <param name="Line">Line it begins on, from 1.</param>
/// <param name="Fields">As written, without their quotes.</param>
internal sealed record SeparatedRow(int Line, IReadOnlyList<string> Fields)
{
    /// <summary>Nothing stands on it.</summary>
    public bool IsBlank => Fields.All(string.IsNullOrWhiteSpace);
}
