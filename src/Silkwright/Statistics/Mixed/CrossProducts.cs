namespace Silkwright.Statistics.Mixed;

/// <summary>All that a fit needs to know of the rows: sums of products of columns, apart for each level of the outer term.</summary>
/// <remarks>The border holds the columns that cross all blocks: effects of the terms across, then X, then y.</remarks>
internal sealed class CrossProducts
{
    private readonly bool[] across;

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
        LogWeights = model.Weights?.Sum(Math.Log) ?? 0;
        Freedom = model.Freedom;
        BelievedSquares = model.Residual is { } residual ? residual.Freedom * residual.Variance : 0;
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

    /// <summary>Squares that the belief of the residual variance is worth.</summary>
    public double BelievedSquares { get; }

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

    private void Add(MixedModel model)
    {
        var outer = Terms[Nesting.Within[0]];
        var own = new List<(int At, double Value)>();
        var border = new List<(int At, double Value)>();
        for (var row = 0; row < Rows; row++)
        {
            own.Clear();
            border.Clear();
            var weight = Math.Sqrt(model.Weights?[row] ?? 1);
            foreach (var t in Nesting.Within)
            {
                for (var c = 0; c < Terms[t].Width; c++)
                    own.Add((OffsetOfLevel[t][Terms[t].LevelOfRow[row]] + c, weight * Terms[t].Columns[c][row]));
            }

            foreach (var t in Nesting.Across)
            {
                for (var c = 0; c < Terms[t].Width; c++)
                    border.Add((BorderOffsets[t] + (Terms[t].LevelOfRow[row] * Terms[t].Width) + c, weight * Terms[t].Columns[c][row]));
            }

            for (var c = 0; c < FixedCount; c++)
                border.Add((BorderEffects + c, weight * model.Fixed[c][row]));
            border.Add((Border - 1, weight * model.Response[row]));
            Add(Blocks[outer.LevelOfRow[row]], own, border);
        }
    }

    private void Add(Block block, List<(int At, double Value)> own, List<(int At, double Value)> border)
    {
        foreach (var (i, value) in own)
        {
            foreach (var (j, other) in own)
                block.Products[(i * block.Size) + j] += value * other;
            foreach (var (j, other) in border)
                block.WithBorder[(i * block.At.Length) + block.Place(j)] += value * other;
        }

        foreach (var (i, value) in border)
        {
            foreach (var (j, other) in border)
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

        public int Place(int column) => Array.BinarySearch(at, column);
    }
}
