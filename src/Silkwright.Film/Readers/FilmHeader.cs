namespace Silkwright.Film.Readers;

/// <summary>What a film's file says about itself.</summary>
/// <param name="Name">The file's name, without its folder.</param>
/// <param name="WidthPx">Columns. [px]</param>
/// <param name="HeightPx">Rows. [px]</param>
/// <param name="Dpi">Resolution, given or read. [1/in]</param>
/// <param name="Remarks">What had to be assumed or simplified.</param>
public sealed record FilmHeader(string Name, int WidthPx, int HeightPx, double Dpi, IReadOnlyList<string> Remarks);
