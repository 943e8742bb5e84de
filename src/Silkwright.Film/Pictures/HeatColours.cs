using SkiaSharp;

namespace Silkwright.Film.Pictures;

/// <summary>What a film's heat is painted with.</summary>
/// <param name="Paper">Gap as wide as need be.</param>
/// <param name="Ink">What prints and is wide enough.</param>
/// <param name="Narrower">What prints and is narrower than is held: it may be lost.</param>
/// <param name="Near">What prints and is wider by less than half.</param>
/// <param name="GapNarrower">Gap that is narrower than is held: it may fill in.</param>
/// <param name="GapNear">Gap that is wider by less than half.</param>
public sealed record HeatColours(string Paper, string Ink, string Narrower, string Near, string GapNarrower, string GapNear)
{
    /// <summary>
    /// Vermilion, orange, blue and sky blue of M. Okabe and K. Ito's set that all kinds of colour vision tell apart (<i>Color Universal Design</i>, 2008; from memory).
    /// </summary>
    public static HeatColours Day { get; } = new("#ffffff", "#46423c", "#d55e00", "#e69f00", "#0072b2", "#56b4e9");

    /// <summary>
    /// Red alone, in six steps of one and the same contrast (1.39:1 by WCAG 2.2's relative luminance, the most that six can have). What may be lost glows brighter than clear film,
    /// what may fill in is darker than black.
    /// </summary>
    public static HeatColours SafeLight { get; } = new("#a90000", "#560000", "#ff0000", "#d10000", "#000000", "#810000");

    internal SKColor[] Painted => [.. new[] { Narrower, GapNarrower, Near, GapNear, Ink, Paper }.Select(SKColor.Parse)];
}
