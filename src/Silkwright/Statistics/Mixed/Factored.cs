namespace Silkwright.Statistics.Mixed;

/// <summary>The equations of a mixed model taken apart for given relative factors: solution, criterion and its slope.</summary>
/// <remarks>
/// The penalised least-squares equations of D. Bates, M. Mächler, B. Bolker and S. Walker, *J. Stat. Softw.* 67 (2015) 1, with the levels of the outer term
/// eliminated one by one and what crosses them left as a dense border. With M the matrix of effects and fixed columns and r² the penalised residual sum of
/// squares, the restricted criterion is log|M| + (n − p)(1 + log(2π r²/(n − p))). Its slope is tr(W dA) with W = M⁻¹ + (n − p)/r² v vᵀ, v the residual's
/// coefficients: so it costs about as much as the criterion itself, and a variance of 0 is a place like any other.
/// </remarks>
internal sealed class Factored
{
    /// <summary>Parts that the blocks are summed in, whoever does them, so that the sums do not hang on the number of threads.</summary>
    private const int Parts = 8;

    /// <summary>Blocks below which threads cost more than they bring.</summary>
    private const int LeastForThreads = 200;

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

    /// <summary>Slope of the criterion over the entries of the relative factors, in their order.</summary>
    public double[] Slope()
    {
        var sums = new double[Parts][][];
        ForParts((part, first, end) =>
        {
            sums[part] = [.. factors.Widths.Select(q => new double[q * q])];
            for (var b = first; b < end; b++)
                AddSlope(b, sums[part]);
        });
        var slopes = factors.Widths.Select(q => new double[q * q]).ToArray();
        foreach (var sum in sums)
        {
            for (var t = 0; t < slopes.Length; t++)
                Factor.AddTimes(slopes[t], sum[t], 1);
        }

        AddBorderSlope(slopes);
        return Packed(slopes);
    }

    /// <summary>What the blocks take from the border.</summary>
    private double[] EliminateBlocks()
    {
        var sums = new double[Parts][];
        ForParts((part, first, end) =>
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

        ScaleTouched(products, factors, block, c);
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
    private void Scale(Span<double> matrix, int stride, bool columns, bool rows)
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

    /// <summary>Scales the columns of touched border effects.</summary>
    private static void ScaleTouched(CrossProducts products, RelativeFactors factors, CrossProducts.Block block, Span<double> matrix)
    {
        for (var k = 0; k < block.At.Length && block.At[k] < products.BorderEffects;)
        {
            var t = TermAcross(products, factors, block.At[k]);
            factors.ScaleColumns(t, matrix, block.At.Length, k);
            k += factors.Widths[t];
        }
    }

    private static int TermAcross(CrossProducts products, RelativeFactors factors, int column) =>
        products.Nesting.Across.First(t => column >= products.BorderOffsets[t] && column < products.BorderOffsets[t] + (products.Terms[t].Levels * factors.Widths[t]));

    /// <summary>v of a block: T⁻¹ C v of the border.</summary>
    private double[] Residual(int b)
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

    private double BorderResidual(int column) => column == products.Border - 1 ? 1 : -BorderSolution[column];

    private void AddSlope(int b, double[][] slopes)
    {
        var block = products.Blocks[b];
        var (size, columns) = (block.Size, block.At.Length);
        var per = products.Freedom / PenalisedSquares;
        var inverse = BorderInverse;
        var n = products.Border - 1;
        var v = Residual(b);
        var following = Following(b);

        // W between block and border, columns x size, and within the block, size x size.
        var turned = Turned(following, size, columns);
        var across = new double[columns * size];
        for (var k = 0; k < columns - 1; k++)
        {
            var row = inverse.AsSpan(block.At[k] * n, n);
            for (var j = 0; j < columns - 1; j++)
                Factor.AddTimes(across.AsSpan(k * size, size), turned.AsSpan(j * size, size), -row[block.At[j]]);
        }

        var within = new double[size * size];
        for (var i = 0; i < size; i++)
            within[(i * size) + i] = 1;
        Factor.Forward(lowers[b], size, size, within, size);
        Factor.Backward(lowers[b], size, size, within, size);
        for (var i = 0; i < size; i++)
        {
            for (var k = 0; k < columns - 1; k++)
                Factor.AddTimes(within.AsSpan(i * size, size), across.AsSpan(k * size, size), -following[(i * columns) + k]);
            Factor.AddTimes(within.AsSpan(i * size, size), v, per * v[i]);
        }

        for (var k = 0; k < columns; k++)
            Factor.AddTimes(across.AsSpan(k * size, size), v, per * BorderResidual(block.At[k]));

        var own = (double[])block.Products.Clone();
        var with = (double[])block.WithBorder.Clone();
        foreach (var group in block.Groups)
            factors.ScaleColumns(group.Term, own, size, group.Offset);
        ScaleTouched(products, factors, block, with);
        foreach (var group in block.Groups)
        {
            var q = factors.Widths[group.Term];
            for (var i = 0; i < q; i++)
            {
                for (var j = 0; j < q; j++)
                {
                    var sum = 0.0;
                    for (var l = 0; l < size; l++)
                        sum += own[((group.Offset + i) * size) + l] * within[(l * size) + group.Offset + j];
                    for (var k = 0; k < columns; k++)
                        sum += with[((group.Offset + i) * columns) + k] * across[(k * size) + group.Offset + j];
                    slopes[group.Term][(i * q) + j] += 2 * sum;
                }
            }
        }

        // The touched effects of the border: (Λᵀ H)ᵀ times W between block and border.
        var raw = (double[])block.WithBorder.Clone();
        foreach (var group in block.Groups)
            factors.ScaleRows(group.Term, raw, columns, group.Offset);
        for (var k = 0; k < columns && block.At[k] < products.BorderEffects;)
        {
            var t = TermAcross(products, factors, block.At[k]);
            var q = factors.Widths[t];
            for (var i = 0; i < q; i++)
            {
                for (var j = 0; j < q; j++)
                {
                    var sum = 0.0;
                    for (var l = 0; l < size; l++)
                        sum += raw[(l * columns) + k + i] * across[((k + j) * size) + l];
                    slopes[t][(i * q) + j] += 2 * sum;
                }
            }

            k += q;
        }
    }

    private static double[] Turned(double[] matrix, int rows, int columns)
    {
        var turned = new double[matrix.Length];
        for (var i = 0; i < rows; i++)
        {
            for (var j = 0; j < columns; j++)
                turned[(j * rows) + i] = matrix[(i * columns) + j];
        }

        return turned;
    }

    private void AddBorderSlope(double[][] slopes)
    {
        var n = products.Border;
        var per = products.Freedom / PenalisedSquares;
        var scaled = (double[])products.BorderProducts.Clone();
        Scale(scaled, n, columns: true, rows: false);
        foreach (var t in products.Nesting.Across)
        {
            var q = factors.Widths[t];
            for (var level = 0; level < products.Terms[t].Levels; level++)
            {
                var first = products.BorderOffsets[t] + (level * q);
                for (var i = 0; i < q; i++)
                {
                    for (var j = 0; j < q; j++)
                    {
                        var sum = 0.0;
                        for (var k = 0; k < n; k++)
                        {
                            var w = (k < n - 1 ? BorderInverse[(k * (n - 1)) + first + j] : 0) + (per * BorderResidual(k) * BorderResidual(first + j));
                            sum += scaled[((first + i) * n) + k] * w;
                        }

                        slopes[t][(i * q) + j] += 2 * sum;
                    }
                }
            }
        }
    }

    private double[] Packed(double[][] slopes)
    {
        var packed = new List<double>(factors.Count);
        for (var t = 0; t < slopes.Length; t++)
        {
            var q = factors.Widths[t];
            for (var c = 0; c < q; c++)
            {
                for (var r = c; r < q; r++)
                    packed.Add(slopes[t][(r * q) + c]);
            }
        }

        return [.. packed];
    }

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

    private void ForParts(Action<int, int, int> work)
    {
        var count = products.Blocks.Length;
        void Part(int part) => work(part, (int)((long)count * part / Parts), (int)((long)count * (part + 1) / Parts));
        if (count < LeastForThreads)
        {
            for (var part = 0; part < Parts; part++)
                Part(part);
        }
        else
        {
            _ = Parallel.For(0, Parts, Part);
        }
    }
}
