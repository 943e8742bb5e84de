namespace Silkwright.Statistics.Mixed;

/// <summary>The equations of a mixed model taken apart for given relative factors: solution and criterion; its slope is <see cref="CriterionSlope"/>.</summary>
/// <remarks>
/// The penalised least-squares equations of D. Bates, M. Mächler, B. Bolker and S. Walker, *J. Stat. Softw.* 67 (2015) 1, with the levels of the outer term
/// eliminated one by one and what crosses them left as a dense border. With M the matrix of effects and fixed columns and r² the penalised residual sum of
/// squares, the restricted criterion is log|M| + (n − p)(1 + log(2π r²/(n − p))).
/// </remarks>
internal sealed class Factored
{
    /// <summary>A column that lies within this share of the others is one of them, for a computer.</summary>
    private const double Collinear = 1e-11;

    private readonly CrossProducts products;
    private readonly RelativeFactors factors;
    private readonly double[][] lowers;
    private readonly double[][] solved;
    private readonly double[] blockLogs;
    private readonly double[] left;
    private readonly double[] border;
    private double[]? borderInverse;

    /// <exception cref="ArgumentException">A fixed effect's column is a combination of others.</exception>
    public Factored(CrossProducts products, RelativeFactors factors)
        : this(products, factors, new double[products.Blocks.Length][], new double[products.Blocks.Length][], new double[products.Blocks.Length], null)
    {
    }

    private Factored(CrossProducts products, RelativeFactors factors, double[][] lowers, double[][] solved, double[] blockLogs, double[]? taken)
    {
        (this.products, this.factors, this.lowers, this.solved, this.blockLogs) = (products, factors, lowers, solved, blockLogs);
        var (n, m) = (products.Border, products.BorderEffects);
        border = (double[])products.BorderProducts.Clone();
        Scale(border, n, columns: true, rows: true);
        for (var i = 0; i < m; i++)
            border[(i * n) + i] += 1;
        left = taken ?? EliminateBlocks();
        Factor.AddTimes(border, left, 1);
        var logs = blockLogs.Sum();
        if (!Factor.Cholesky(border, n, n - 1, Collinear))
            throw new ArgumentException("A fixed effect cannot be told from the others: its column is a combination of theirs.");
        var y = border.AsSpan((n - 1) * n, n);
        for (var j = 0; j < n - 1; j++)
            y[j] = (y[j] - Factor.Dot(y[..j], border.AsSpan(j * n, j))) / border[(j * n) + j];
        PenalisedSquares = Math.Max(double.Epsilon, y[n - 1] - Factor.Dot(y[..(n - 1)], y[..(n - 1)])) + products.BelievedSquares;
        for (var j = 0; j < n - 1; j++)
            logs += 2 * Math.Log(border[(j * n) + j]);
        ResidualVariance = PenalisedSquares / products.Freedom;
        Criterion = logs - products.LogWeights + (products.Freedom * (1 + Math.Log(2 * Math.PI * ResidualVariance)));
        BorderSolution = y[..(n - 1)].ToArray();
        Factor.Backward(border, n, n - 1, BorderSolution, 1);
    }

    /// <summary>The same factors, and products that differ in one block: that block alone is eliminated again.</summary>
    public Factored With(CrossProducts changed, int block)
    {
        var count = changed.Blocks.Length;
        var taken = (double[])left.Clone();
        if (block < products.Blocks.Length)
        {
            // What the block took from the border comes back.
            var back = new double[taken.Length];
            Factor.TakeProduct(back, products.Border, products.Blocks[block].At, solved[block], products.Blocks[block].Size);
            Factor.AddTimes(taken, back, -1);
        }

        double[][] newLowers = new double[count][], newSolved = new double[count][];
        var newLogs = new double[count];
        lowers.CopyTo(newLowers, 0);
        solved.CopyTo(newSolved, 0);
        blockLogs.CopyTo(newLogs, 0);
        Eliminate(changed, factors, block, taken, newLowers, newSolved, newLogs);
        return new Factored(changed, factors, newLowers, newSolved, newLogs, taken);
    }

    /// <summary>−2 log of the restricted likelihood at its best residual variance and fixed effects.</summary>
    public double Criterion { get; }

    public double PenalisedSquares { get; }

    public double ResidualVariance { get; }

    /// <summary>Effects in the border on the unit scale, then the fixed effects.</summary>
    public double[] BorderSolution { get; }

    /// <summary>Inverse of what is left of the border's matrix once the blocks are eliminated, y left out: covariances over the residual variance.</summary>
    public double[] BorderInverse => borderInverse ??= Inverse();

    /// <summary>Products of two of the border's columns once the blocks are eliminated; their terms' factors must be the unit matrix.</summary>
    public double Marginal(int one, int other) =>
        products.BorderProducts[(one * products.Border) + other] + left[(Math.Max(one, other) * products.Border) + Math.Min(one, other)];

    /// <summary>A block's effects on the unit scale.</summary>
    public double[] Effects(int block)
    {
        var effects = Residual(block);
        for (var i = 0; i < effects.Length; i++)
            effects[i] = -effects[i];
        return effects;
    }

    /// <summary>T⁻¹ C of a block: how its effects follow the border's columns that it touches. Size x touched columns.</summary>
    public double[] Following(int block)
    {
        var following = (double[])solved[block].Clone();
        Factor.Backward(lowers[block], products.Blocks[block].Size, products.Blocks[block].Size, following, products.Blocks[block].At.Length);
        return following;
    }

    /// <summary>T⁻¹ of a block.</summary>
    public double[] Inverse(int block)
    {
        var size = products.Blocks[block].Size;
        var inverse = new double[size * size];
        for (var i = 0; i < size; i++)
            inverse[(i * size) + i] = 1;
        Factor.Forward(lowers[block], size, size, inverse, size);
        Factor.Backward(lowers[block], size, size, inverse, size);
        return inverse;
    }

    /// <summary>T⁻¹ x of a block.</summary>
    public double[] Solve(int block, double[] x)
    {
        var size = products.Blocks[block].Size;
        var solution = (double[])x.Clone();
        Factor.Forward(lowers[block], size, size, solution, 1);
        Factor.Backward(lowers[block], size, size, solution, 1);
        return solution;
    }

    /// <summary>Takes from a combination of the border's columns what a block's part of it follows of them.</summary>
    public void TakeFollowing(int block, double[] x, double[] combination)
    {
        var at = products.Blocks[block].At;
        var following = Following(block);
        for (var i = 0; i < x.Length; i++)
        {
            for (var k = 0; k < at.Length - 1; k++)
                combination[at[k]] -= x[i] * following[(i * at.Length) + k];
        }
    }

    /// <summary>cᵀ S⁻¹ c of a combination of the border's columns.</summary>
    public double BorderSquare(double[] combination)
    {
        var n = combination.Length;
        var solved = (double[])combination.Clone();
        Factor.Forward(border, products.Border, n, solved, 1);
        return Factor.Dot(solved, solved);
    }

    /// <summary>What the blocks take from the border.</summary>
    private double[] EliminateBlocks()
    {
        var sums = new double[BlockParts.Count][];
        BlockParts.ForEach(products.Blocks.Length, (part, first, end) =>
        {
            var sum = new double[border.Length];
            for (var b = first; b < end; b++)
                Eliminate(products, factors, b, sum, lowers, solved, blockLogs);
            sums[part] = sum;
        });
        foreach (var sum in sums.Skip(1))
            Factor.AddTimes(sums[0], sum, 1);
        return sums[0];
    }

    private static void Eliminate(CrossProducts products, RelativeFactors factors, int b, double[] sum, double[][] lowers, double[][] solved, double[] blockLogs)
    {
        var block = products.Blocks[b];
        var (size, columns) = (block.Size, block.At.Length);
        var t = (double[])block.Products.Clone();
        var c = (double[])block.WithBorder.Clone();
        foreach (var group in block.Groups)
            factors.ScaleColumns(group.Term, t, size, group.Offset);
        foreach (var group in block.Groups)
        {
            factors.ScaleRows(group.Term, t, size, group.Offset);
            factors.ScaleRows(group.Term, c, columns, group.Offset);
        }

        TouchedBorder.Scale(products, factors, block, c);
        for (var i = 0; i < size; i++)
            t[(i * size) + i] += 1;
        _ = Factor.Cholesky(t, size, size, 0);
        Factor.Forward(t, size, size, c, columns);
        Factor.TakeProduct(sum, products.Border, block.At, c, size);
        (lowers[b], solved[b]) = (t, c);
        var logs = 0.0;
        for (var i = 0; i < size; i++)
            logs += 2 * Math.Log(t[(i * size) + i]);
        blockLogs[b] = logs;
    }

    /// <summary>Scales the border's effects of a matrix's columns, rows or both.</summary>
    internal void Scale(Span<double> matrix, int stride, bool columns, bool rows)
    {
        foreach (var t in products.Nesting.Across)
        {
            for (var level = 0; level < products.Terms[t].Levels; level++)
            {
                var first = products.BorderOffsets[t] + (level * factors.Widths[t]);
                if (columns)
                    factors.ScaleColumns(t, matrix, stride, first);
                if (rows)
                    factors.ScaleRows(t, matrix, stride, first);
            }
        }
    }

    /// <summary>v of a block: T⁻¹ C v of the border.</summary>
    internal double[] Residual(int b)
    {
        var block = products.Blocks[b];
        var (size, columns) = (block.Size, block.At.Length);
        var v = new double[size];
        for (var i = 0; i < size; i++)
        {
            for (var k = 0; k < columns; k++)
                v[i] -= solved[b][(i * columns) + k] * BorderResidual(block.At[k]);
        }

        Factor.Backward(lowers[b], size, size, v, 1);
        return v;
    }

    internal double BorderResidual(int column) => column == products.Border - 1 ? 1 : -BorderSolution[column];

    private double[] Inverse()
    {
        var n = products.Border - 1;
        var inverse = new double[n * n];
        for (var i = 0; i < n; i++)
            inverse[(i * n) + i] = 1;
        Factor.Forward(border, products.Border, n, inverse, n);
        Factor.Backward(border, products.Border, n, inverse, n);
        return inverse;
    }
}
