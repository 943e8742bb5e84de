using System.Globalization;

namespace Silkwright.Contracts;

/// <summary>One record of a separated text.</summary>
/// <param name="Line">Line it begins on, from 1.</param>
/// <param name="Fields">As written, without their quotes.</param>
/// <param name="Separator">What separates them: a comma or a semicolon.</param>
internal sealed record SeparatedRow(int Line, IReadOnlyList<string> Fields, char Separator = ',')
{
    /// <summary>Nothing stands on it.</summary>
    public bool IsBlank => Fields.All(string.IsNullOrWhiteSpace);

    /// <summary>A field of it as a number. Where semicolons separate, one comma is the decimal sign, as spreadsheets of half the world write it.</summary>
    public bool TryNumber(string field, out double number) => double.TryParse(
        Separator == ';' && !field.Contains('.', StringComparison.Ordinal) && field.IndexOf(',', StringComparison.Ordinal) is >= 0 and var at && field.LastIndexOf(',') == at ? field.Replace(',', '.') : field,
        NumberStyles.Float, CultureInfo.InvariantCulture, out number);
}
