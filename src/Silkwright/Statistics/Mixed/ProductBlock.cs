namespace Silkwright.Statistics.Mixed;

/// <summary>Products of the columns of one level of the outer term and those within it.</summary>
internal sealed class ProductBlock(int size, List<BlockGroup> groups, int[] at)
{
    public int Size => size;

    public IReadOnlyList<BlockGroup> Groups => groups;

    /// <summary>Rising columns of the border that it has to do with.</summary>
    public int[] At => at;

    /// <summary>size x size.</summary>
    public double[] Products { get; } = new double[size * size];

    /// <summary>size x At.Length.</summary>
    public double[] WithBorder { get; } = new double[size * at.Length];

    /// <summary>The same products in a block of more columns.</summary>
    public ProductBlock Within(int newSize, List<BlockGroup> newGroups, int[] newAt)
    {
        var grown = new ProductBlock(newSize, newGroups, newAt);
        for (var i = 0; i < size; i++)
        {
            Products.AsSpan(i * size, size).CopyTo(grown.Products.AsSpan(i * newSize));
            for (var k = 0; k < at.Length; k++)
                grown.WithBorder[(i * newAt.Length) + grown.Place(at[k])] = WithBorder[(i * at.Length) + k];
        }

        return grown;
    }

    public int Place(int column) => Array.BinarySearch(at, column);
}
