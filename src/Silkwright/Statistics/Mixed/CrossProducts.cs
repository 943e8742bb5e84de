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
        Blocks = new BlockLayout(this).Blocks();
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
        Blocks = block < before.Blocks.Length ? [.. before.Blocks] : [.. before.Blocks, new ProductBlock(0, [], [.. Enumerable.Range(BorderEffects, FixedCount + 1)])];
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
    public ProductBlock[] Blocks { get; }

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

    /// <summary>A block with room for the levels that a row brings.</summary>
    private ProductBlock Grown(ProductBlock before, int block, MixedRow row)
    {
        var (groups, size) = (before.Groups.ToList(), before.Size);
        foreach (var t in Nesting.Within)
        {
            var level = row.Random[t].Level;
            if (level < BlockOfLevel[t].Length && BlockOfLevel[t][level] >= 0 && (t != Nesting.Within[0] || before.Size > 0))
                continue;
            groups.Add(new BlockGroup(t, level, size));
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

    private void Add(ProductBlock block, double weight, double response, Func<int, int> level, Func<int, int, double> column, Func<int, double> fixedColumn)
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

    private void Add(ProductBlock block)
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
}
