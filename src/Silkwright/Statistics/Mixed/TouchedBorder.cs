namespace Silkwright.Statistics.Mixed;

/// <summary>The border's effects that one block has to do with.</summary>
internal static class TouchedBorder
{
    /// <summary>Scales their columns.</summary>
    public static void Scale(CrossProducts products, RelativeFactors factors, ProductBlock block, Span<double> matrix)
    {
        for (var k = 0; k < block.At.Length && block.At[k] < products.BorderEffects;)
        {
            var t = TermOf(products, factors, block.At[k]);
            factors.ScaleColumns(t, matrix, block.At.Length, k);
            k += factors.Widths[t];
        }
    }

    /// <summary>The term that a column of the border belongs to.</summary>
    public static int TermOf(CrossProducts products, RelativeFactors factors, int column) =>
        products.Nesting.Across.First(t => column >= products.BorderOffsets[t] && column < products.BorderOffsets[t] + (products.Terms[t].Levels * factors.Widths[t]));
}
