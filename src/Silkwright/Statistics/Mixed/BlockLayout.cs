namespace Silkwright.Statistics.Mixed;

/// <summary>Where each level's columns stand: one block for each level of the outer term, with room for the levels within it and the border's columns that it has to do with.</summary>
internal sealed class BlockLayout(CrossProducts products)
{
    private readonly Nesting nesting = products.Nesting;

    /// <summary>Empty blocks; where each level's columns stand is written down in the products.</summary>
    public ProductBlock[] Blocks()
    {
        var outer = products.Terms[nesting.Within[0]];
        for (var level = 0; level < outer.Levels; level++)
            products.BlockOfLevel[nesting.Within[0]][level] = level;
        var groups = Enumerable.Range(0, outer.Levels).Select(level => new List<BlockGroup> { new(nesting.Within[0], level, 0) }).ToArray();
        var size = Enumerable.Repeat(outer.Width, outer.Levels).ToArray();
        foreach (var t in nesting.Within.Skip(1))
        {
            var seen = new bool[products.Terms[t].Levels];
            for (var row = 0; row < products.Rows; row++)
            {
                var level = products.Terms[t].LevelOfRow[row];
                if (seen[level])
                    continue;
                seen[level] = true;
                var block = outer.LevelOfRow[row];
                (products.OffsetOfLevel[t][level], products.BlockOfLevel[t][level]) = (size[block], block);
                groups[block].Add(new BlockGroup(t, level, size[block]));
                size[block] += products.Terms[t].Width;
            }
        }

        var touched = Enumerable.Range(0, outer.Levels).Select(_ => new SortedSet<int>()).ToArray();
        foreach (var t in nesting.Across)
        {
            for (var row = 0; row < products.Rows; row++)
                _ = touched[outer.LevelOfRow[row]].Add(products.BorderOffsets[t] + (products.Terms[t].LevelOfRow[row] * products.Terms[t].Width));
        }

        return [.. Enumerable.Range(0, outer.Levels).Select(level => new ProductBlock(size[level], groups[level], At(touched[level])))];
    }

    /// <summary>The border's columns that a block has anything to do with: the levels it touches, and X and y.</summary>
    private int[] At(SortedSet<int> firsts)
    {
        var at = new List<int>();
        foreach (var t in nesting.Across)
        {
            foreach (var first in firsts.GetViewBetween(products.BorderOffsets[t], products.BorderOffsets[t] + (products.Terms[t].Levels * products.Terms[t].Width) - 1))
                at.AddRange(Enumerable.Range(first, products.Terms[t].Width));
        }

        at.Sort();
        return [.. at, .. Enumerable.Range(products.BorderEffects, products.FixedCount + 1)];
    }
}
