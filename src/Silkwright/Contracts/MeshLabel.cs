using System.Globalization;
using Silkwright.Mesh;

namespace Silkwright.Contracts;

/// <summary>A mesh as its label names it, <c>61/64</c>: threads to the centimetre and their diameter in micrometres.</summary>
public static class MeshLabel
{
    /// <summary>How to write one, for people.</summary>
    public const string Remedy = "threads to the centimetre, a stroke and the thread in um, as in 61/64";

    /// <summary>
    /// No mesh of the trade is so closed; a label of threads to the inch, 156/64, would be one of nearly no opening if it were taken for this. Common practice, no source. [%]
    /// </summary>
    private const double LeastOpenPercent = 10;

    private const double UmPerCm = 10_000;

    /// <summary>The mesh; none where the text is no label, or one that no mesh can have.</summary>
    public static MeshFabric? Read(string text) =>
        text.Split('/') is [var count, var thread] && Number(count) is { } perCm && Number(thread) is { } um
        && MeshQuestion.Count.Allows(perCm) && MeshQuestion.Thread.Allows(um) && OpenPercent(perCm, um) >= LeastOpenPercent
            ? new MeshFabric(perCm, um)
            : null;

    private static double OpenPercent(double perCm, double um) => 100 * Math.Pow(Math.Max(0, 1 - (perCm * um / UmPerCm)), 2);

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var number) ? number : null;
}
