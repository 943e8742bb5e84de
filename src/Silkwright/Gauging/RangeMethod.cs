namespace Silkwright.Gauging;

/// <summary>The average-and-range method, as it is done with pencil and paper.</summary>
/// <remarks>
/// AIAG, Measurement Systems Analysis, 4th edition, ch. III; its K₁, K₂ and K₃ are 1/d₂ of the repeats and 1/d₂* of operators and parts, computed here. It has no
/// interaction, and its number of classes may differ from the analysis of variance's: the figures say which was used.
/// </remarks>
internal static class RangeMethod
{
    /// <returns>None where the study is not balanced or has no repeats.</returns>
    public static VarianceParts? Of(StudyLayout layout)
    {
        if (!layout.IsBalanced || !layout.HasRepeats)
            return null;
        var repeats = layout.CellCounts[0];
        var cells = layout.Readings.Select((reading, i) => (layout.CellOf[i], reading.ValueUm)).GroupBy(pair => pair.Item1, pair => pair.ValueUm);
        var repeatability = Square(cells.Average(cell => cell.Max() - cell.Min()) / NormalRange.Mean(repeats));
        var hands = Means(layout.OperatorOf);
        var parts = Means(layout.PartOf);
        var ofHands = hands.Length < 2 ? 0 : Square((hands.Max() - hands.Min()) / NormalRange.RootMeanSquare(hands.Length)) - (repeatability / (parts.Length * repeats));
        var ofParts = parts.Length < 2 ? 0 : Square((parts.Max() - parts.Min()) / NormalRange.RootMeanSquare(parts.Length));
        return new VarianceParts(repeatability, Math.Max(0, ofHands), 0, ofParts);

        double[] Means(int[] groupOf) =>
            [.. layout.Readings.Select((reading, i) => (groupOf[i], reading.ValueUm)).GroupBy(pair => pair.Item1, pair => pair.ValueUm).Select(group => group.Average())];
    }

    private static double Square(double x) => x * x;
}
