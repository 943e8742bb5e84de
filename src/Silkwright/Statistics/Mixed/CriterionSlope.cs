namespace Silkwright.Statistics.Mixed;

/// <summary>The slope of a mixed model's criterion over the entries of its relative factors.</summary>
/// <remarks>
/// It is tr(W dA) with W = M⁻¹ + (n − p)/r² v vᵀ, M as in <see cref="Factored"/> and v the residual's coefficients: so it costs about as much as the criterion itself, and a
/// variance of 0 is a place like any other.
/// </remarks>
internal sealed class CriterionSlope(CrossProducts products, RelativeFactors factors, Factored factored)
{
    /// <summary>Slope of the criterion over the entries of the relative factors, in their order.</summary>
    public double[] Of()
    {
        var sums = new double[BlockParts.Count][][];
        BlockParts.ForEach(products.Blocks.Length, (part, first, end) =>
        {
            sums[part] = [.. factors.Widths.Select(q => new double[q * q])];
            for (var b = first; b < end; b++)
                AddBlock(b, sums[part]);
        });
        var slopes = factors.Widths.Select(q => new double[q * q]).ToArray();
        foreach (var sum in sums)
        {
            for (var t = 0; t < slopes.Length; t++)
                Factor.AddTimes(slopes[t], sum[t], 1);
        }

        AddBorder(slopes);
        return Packed(slopes);
    }

    private void AddBlock(int b, double[][] slopes)
    {
        var block = products.Blocks[b];
        var (size, columns) = (block.Size, block.At.Length);
        var per = products.Freedom / factored.PenalisedSquares;
        var inverse = factored.BorderInverse;
        var n = products.Border - 1;
        var v = factored.Residual(b);
        var following = factored.Following(b);

        // W between block and border, columns x size, and within the block, size x size.
        var turned = Turned(following, size, columns);
        var across = new double[columns * size];
        for (var k = 0; k < columns - 1; k++)
        {
            var row = inverse.AsSpan(block.At[k] * n, n);
            for (var j = 0; j < columns - 1; j++)
                Factor.AddTimes(across.AsSpan(k * size, size), turned.AsSpan(j * size, size), -row[block.At[j]]);
        }

        var within = factored.Inverse(b);
        for (var i = 0; i < size; i++)
        {
            for (var k = 0; k < columns - 1; k++)
                Factor.AddTimes(within.AsSpan(i * size, size), across.AsSpan(k * size, size), -following[(i * columns) + k]);
            Factor.AddTimes(within.AsSpan(i * size, size), v, per * v[i]);
        }

        for (var k = 0; k < columns; k++)
            Factor.AddTimes(across.AsSpan(k * size, size), v, per * factored.BorderResidual(block.At[k]));

        var own = (double[])block.Products.Clone();
        var with = (double[])block.WithBorder.Clone();
        foreach (var group in block.Groups)
            factors.ScaleColumns(group.Term, own, size, group.Offset);
        TouchedBorder.Scale(products, factors, block, with);
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
            var t = TouchedBorder.TermOf(products, factors, block.At[k]);
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

    private void AddBorder(double[][] slopes)
    {
        var n = products.Border;
        var per = products.Freedom / factored.PenalisedSquares;
        var scaled = (double[])products.BorderProducts.Clone();
        factored.Scale(scaled, n, columns: true, rows: false);
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
                            var w = (k < n - 1 ? factored.BorderInverse[(k * (n - 1)) + first + j] : 0) + (per * factored.BorderResidual(k) * factored.BorderResidual(first + j));
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
}
