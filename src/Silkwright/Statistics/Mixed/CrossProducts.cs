namespace Silkwright.Statistics.Mixed;

/// <summary>All that a fit needs to know of the rows: sums of products of columns, apart for each level of the outer term.</summary>
/// <remarks>The border holds the columns that cross all blocks: effects of the terms across, then X, then y.</remarks>
internal sealed class CrossProducts
{
    private readonly bool[] across;
    private readonly List<(int At, double Value)> own = [];
    private readonly List<(int At, double Value)> crossing = [];

    public CrossProducts(MixedModel model)
    {
        Terms = model.Random;
        Rows = model.Response.Count;
        Nesting = new Nesting(Terms);
        FixedCount = model.Fixed.Count;
        BorderOffsets = new int[Terms.Count];
        foreach (var t in Nesting.Across)
        {
            BorderOffsets[t] = BorderEffects;
            BorderEffects += Terms[t].Levels * Terms[t].Width;
        }

        Border = BorderEffects + FixedCount + 1;
        BorderProducts = new double[Border * Border];
        OffsetOfLevel = [.. Terms.Select(term => new int[term.Levels])];
        BlockOfLevel = [.. Terms.Select(term => Enumerable.Repeat(-1, term.Levels).ToArray())];
        Blocks = MakeBlocks();
        across = [.. Enumerable.Range(0, Terms.Count).Select(Nesting.Across.Contains)];
        Add(model);
        if (model.Elsewhere is { } told)
            Add(told);
        LogWeights = model.Weights?.Sum(Math.Log) ?? 0;
        Freedom = model.Freedom;
        BelievedFreedom = model.Residual?.Freedom ?? 0;
        BelievedSquares = model.Residual is { } residual ? residual.Freedom * residual.Variance : 0;
    }

    /// <summary>These products with one row more; only its block is another. The terms' rows are those before it.</summary>
    private CrossProducts(CrossProducts before, MixedRow row)
    {
        (Nesting, FixedCount, Border, BorderEffects, BorderOffsets, across) = (before.Nesting, before.FixedCount, before.Border, before.BorderEffects, before.BorderOffsets, before.across);
        (Rows, Freedom, LogWeights) = (before.Rows + 1, before.Freedom + 1, before.LogWeights + Math.Log(row.Weight));
        (BelievedFreedom, BelievedSquares) = (before.BelievedFreedom, before.BelievedSquares);
        BorderProducts = (double[])before.BorderProducts.Clone();
        BlockOfLevel = [.. before.BlockOfLevel];
        OffsetOfLevel = [.. before.OffsetOfLevel];
        Terms = [.. before.Terms.Select((term, t) => row.Random[t].Level == term.Levels ? term with { Levels = term.Levels + 1 } : term)];
        var block = row.Random[Nesting.Within[0]].Level;
        Blocks = block < before.Blocks.Length ? [.. before.Blocks] : [.. before.Blocks, new Block(0, [], [.. Enumerable.Range(BorderEffects, FixedCount + 1)])];
        Blocks[block] = Grown(Blocks[block], block, row);
        Add(Blocks[block], row.Weight, row.Response, t => row.Random[t].Level, (t, c) => row.Random[t].Columns[c], c => row.Fixed[c]);
    }

    public IReadOnlyList<RandomTerm> Terms { get; }

    public Nesting Nesting { get; }

    public int Rows { get; }

    public int FixedCount { get; }

    /// <summary>Effects in the border.</summary>
    public int BorderEffects { get; }

    /// <summary>Columns of the border.</summary>
    public int Border { get; }

    /// <summary>Border x Border.</summary>
    public double[] BorderProducts { get; }

    /// <summary>First border column of each term across.</summary>
    public int[] BorderOffsets { get; }

    /// <summary>One for each level of the outer term.</summary>
    public Block[] Blocks { get; }

    /// <summary>For each term within, and each of its levels: the first of its columns in its block.</summary>
    public int[][] OffsetOfLevel { get; }

    /// <summary>For each term within, and each of its levels: its block, or -1 where it has no rows.</summary>
    public int[][] BlockOfLevel { get; }

    public double LogWeights { get; }

    /// <summary>Rows less fixed effects, and rows' worth of belief.</summary>
    public double Freedom { get; }

    /// <summary>Rows' worth of the belief of the residual variance.</summary>
    public double BelievedFreedom { get; }

    /// <summary>Squares that the belief of the residual variance is worth.</summary>
    public double BelievedSquares { get; }

    /// <summary>Whether a row only changes its block: it brings no new level of a term that crosses the blocks, and none that lies in another block.</summary>
    public bool Takes(MixedRow row)
    {
        var block = row.Random[Nesting.Within[0]].Level;
        return Nesting.Across.All(t => row.Random[t].Level < Terms[t].Levels)
            && Nesting.Within.All(t => row.Random[t].Level <= Terms[t].Levels && (row.Random[t].Level == Terms[t].Levels || BlockOfLevel[t][row.Random[t].Level] is -1 || BlockOfLevel[t][row.Random[t].Level] == block));
    }

    /// <summary>With one row more. Its block alone is another.</summary>
    /// <exception cref="ArgumentException">It changes more.</exception>
    public CrossProducts With(MixedRow row)
    {
        if (!Takes(row))
            throw new ArgumentException("The row brings a new level of a term that crosses the others, or one of another block: it needs a fit of all rows.", nameof(row));
        return new CrossProducts(this, row);
    }

    /// <summary>Whether a term's effects are in the border.</summary>
    public bool IsAcross(int term) => across[term];

    private Block[] MakeBlocks()
    {
        var outer = Terms[Nesting.Within[0]];
        for (var level = 0; level < outer.Levels; level++)
            BlockOfLevel[Nesting.Within[0]][level] = level;
        var groups = Enumerable.Range(0, outer.Levels).Select(level => new List<Group> { new(Nesting.Within[0], level, 0) }).ToArray();
        var size = Enumerable.Repeat(outer.Width, outer.Levels).ToArray();
        foreach (var t in Nesting.Within.Skip(1))
        {
            var seen = new bool[Terms[t].Levels];
            for (var row = 0; row < Rows; row++)
            {
                var level = Terms[t].LevelOfRow[row];
                if (seen[level])
                    continue;
                seen[level] = true;
                var block = outer.LevelOfRow[row];
                (OffsetOfLevel[t][level], BlockOfLevel[t][level]) = (size[block], block);
                groups[block].Add(new Group(t, level, size[block]));
                size[block] += Terms[t].Width;
            }
        }

        var touched = Enumerable.Range(0, outer.Levels).Select(_ => new SortedSet<int>()).ToArray();
        foreach (var t in Nesting.Across)
        {
            for (var row = 0; row < Rows; row++)
                _ = touched[outer.LevelOfRow[row]].Add(BorderOffsets[t] + (Terms[t].LevelOfRow[row] * Terms[t].Width));
        }

        return [.. Enumerable.Range(0, outer.Levels).Select(level => new Block(size[level], groups[level], At(touched[level])))];
    }

    /// <summary>A block with room for the levels that a row brings.</summary>
    private Block Grown(Block before, int block, MixedRow row)
    {
        var (groups, size) = (before.Groups.ToList(), before.Size);
        foreach (var t in Nesting.Within)
        {
            var level = row.Random[t].Level;
            if (level < BlockOfLevel[t].Length && BlockOfLevel[t][level] >= 0 && (t != Nesting.Within[0] || before.Size > 0))
                continue;
            groups.Add(new Group(t, level, size));
            BlockOfLevel[t] = Placed(BlockOfLevel[t], level, block, none: -1);
            OffsetOfLevel[t] = Placed(OffsetOfLevel[t], level, size, none: 0);
            size += Terms[t].Width;
        }

        var touched = new SortedSet<int>(before.At);
        foreach (var t in Nesting.Across)
            touched.UnionWith(Enumerable.Range(BorderOffsets[t] + (row.Random[t].Level * Terms[t].Width), Terms[t].Width));
        return before.Within(size, groups, [.. touched]);
    }

    private static int[] Placed(int[] values, int at, int value, int none)
    {
        var placed = new int[Math.Max(values.Length, at + 1)];
        values.CopyTo(placed, 0);
        Array.Fill(placed, none, values.Length, placed.Length - values.Length);
        placed[at] = value;
        return placed;
    }

    /// <summary>The border's columns that a block has anything to do with: the levels it touches, and X and y.</summary>
    private int[] At(SortedSet<int> firsts)
    {
        var at = new List<int>();
        foreach (var t in Nesting.Across)
        {
            foreach (var first in firsts.GetViewBetween(BorderOffsets[t], BorderOffsets[t] + (Terms[t].Levels * Terms[t].Width) - 1))
                at.AddRange(Enumerable.Range(first, Terms[t].Width));
        }

        at.Sort();
        return [.. at, .. Enumerable.Range(BorderEffects, FixedCount + 1)];
    }

    /// <summary>What rows elsewhere tell stands in the border as if their blocks were eliminated already.</summary>
    private void Add(EffectInformation told)
    {
        int[] at = [.. told.Effects.Select(effect => BorderOffsets[effect.Term] + effect.Level)];
        for (var i = 0; i < at.Length; i++)
        {
            for (var j = 0; j < at.Length; j++)
                BorderProducts[(at[i] * Border) + at[j]] += told.Precision[(i * at.Length) + j];
            BorderProducts[(at[i] * Border) + Border - 1] += told.Pull[i];
            BorderProducts[((Border - 1) * Border) + at[i]] += told.Pull[i];
        }

        BorderProducts[(Border * Border) - 1] += told.Squares;
    }

    private void Add(MixedModel model)
    {
        var outer = Terms[Nesting.Within[0]];
        var at = 0;
        Func<int, int> level = t => Terms[t].LevelOfRow[at];
        Func<int, int, double> column = (t, c) => Terms[t].Columns[c][at];
        Func<int, double> fixedColumn = c => model.Fixed[c][at];
        for (; at < Rows; at++)
            Add(Blocks[outer.LevelOfRow[at]], model.Weights?[at] ?? 1, model.Response[at], level, column, fixedColumn);
    }

    private void Add(Block block, double weight, double response, Func<int, int> level, Func<int, int, double> column, Func<int, double> fixedColumn)
    {
        var root = Math.Sqrt(weight);
        own.Clear();
        crossing.Clear();
        foreach (var t in Nesting.Within)
        {
            for (var c = 0; c < Terms[t].Width; c++)
                own.Add((OffsetOfLevel[t][level(t)] + c, root * column(t, c)));
        }

        foreach (var t in Nesting.Across)
        {
            for (var c = 0; c < Terms[t].Width; c++)
                crossing.Add((BorderOffsets[t] + (level(t) * Terms[t].Width) + c, root * column(t, c)));
        }

        for (var c = 0; c < FixedCount; c++)
            crossing.Add((BorderEffects + c, root * fixedColumn(c)));
        crossing.Add((Border - 1, root * response));
        Add(block);
    }

    private void Add(Block block)
    {
        foreach (var (i, value) in own)
        {
            foreach (var (j, other) in own)
                block.Products[(i * block.Size) + j] += value * other;
            foreach (var (j, other) in crossing)
                block.WithBorder[(i * block.At.Length) + block.Place(j)] += value * other;
        }

        foreach (var (i, value) in crossing)
        {
            foreach (var (j, other) in crossing)
                BorderProducts[(i * Border) + j] += value * other;
        }
    }

    /// <summary>Columns of one level of a term within a block.</summary>
    /// <param name="Term">Number of the term.</param>
    /// <param name="Level">Number of the level.</param>
    /// <param name="Offset">First column.</param>
    internal readonly record struct Group(int Term, int Level, int Offset);

    /// <summary>Products of the columns of one level of the outer term and those within it.</summary>
    internal sealed class Block(int size, List<Group> groups, int[] at)
    {
        public int Size => size;

        public IReadOnlyList<Group> Groups => groups;

        /// <summary>Rising columns of the border that it has to do with.</summary>
        public int[] At => at;

        /// <summary>size x size.</summary>
        public double[] Products { get; } = new double[size * size];

        /// <summary>size x At.Length.</summary>
        public double[] WithBorder { get; } = new double[size * at.Length];

        /// <summary>The same products in a block of more columns.</summary>
        public Block Within(int newSize, List<Group> newGroups, int[] newAt)
        {
            var grown = new Block(newSize, newGroups, newAt);
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
}
