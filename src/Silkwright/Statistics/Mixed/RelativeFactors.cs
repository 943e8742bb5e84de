namespace Silkwright.Statistics.Mixed;

/// <summary>Λ of each term: a lower triangle with Λ Λᵀ the covariance of a level's effects over the residual variance.</summary>
internal sealed class RelativeFactors
{
    private readonly double[][] lower;

    /// <param name="widths">Effects of a level of each term.</param>
    /// <param name="packed">The triangles' entries, column after column; none: the unit matrix each.</param>
    public RelativeFactors(IReadOnlyList<int> widths, IReadOnlyList<double>? packed = null)
    {
        Widths = widths;
        lower = new double[widths.Count][];
        var k = 0;
        for (var t = 0; t < widths.Count; t++)
        {
            var q = widths[t];
            lower[t] = new double[q * q];
            for (var c = 0; c < q; c++)
            {
                for (var r = c; r < q; r++)
                    lower[t][(r * q) + c] = packed is null ? (r == c ? 1 : 0) : packed[k++];
            }
        }
    }

    private RelativeFactors(IReadOnlyList<int> widths, double[][] lower) => (Widths, this.lower) = (widths, lower);

    public IReadOnlyList<int> Widths { get; }

    /// <summary>Entries of all triangles.</summary>
    public int Count => Widths.Sum(q => q * (q + 1) / 2);

    public double this[int term, int row, int column] => lower[term][(row * Widths[term]) + column];

    /// <summary>The same with the unit matrix for some terms.</summary>
    public RelativeFactors WithUnit(IEnumerable<int> terms)
    {
        var changed = (double[][])lower.Clone();
        foreach (var t in terms)
            changed[t] = new RelativeFactors([Widths[t]]).lower[0];
        return new RelativeFactors(Widths, changed);
    }

    /// <summary>Columns of some rows times a term's Λ, in place.</summary>
    public void ScaleColumns(int term, Span<double> rows, int stride, int first)
    {
        var q = Widths[term];
        var l = lower[term];
        for (var row = 0; row < rows.Length; row += stride)
        {
            var at = rows.Slice(row + first, q);
            for (var c = 0; c < q; c++)
            {
                var sum = 0.0;
                for (var r = c; r < q; r++)
                    sum += at[r] * l[(r * q) + c];
                at[c] = sum;
            }
        }
    }

    /// <summary>A term's Λᵀ times some rows, in place.</summary>
    public void ScaleRows(int term, Span<double> matrix, int stride, int first)
    {
        var q = Widths[term];
        var l = lower[term];
        for (var c = 0; c < q; c++)
        {
            var into = matrix.Slice((first + c) * stride, stride);
            for (var i = 0; i < stride; i++)
                into[i] *= l[(c * q) + c];
            for (var r = c + 1; r < q; r++)
                Factor.AddTimes(into, matrix.Slice((first + r) * stride, stride), l[(r * q) + c]);
        }
    }

    /// <summary>Λᵀ times a row's columns: what a level's effects on the unit scale are multiplied by.</summary>
    public double[] Unit(int term, double[] columns)
    {
        ScaleColumns(term, columns, columns.Length, 0);
        return columns;
    }

    /// <summary>Λ times a level's effects on the unit scale.</summary>
    public double[] Effects(int term, ReadOnlySpan<double> unit)
    {
        var q = Widths[term];
        var effects = new double[q];
        for (var r = 0; r < q; r++)
        {
            for (var c = 0; c <= r; c++)
                effects[r] += lower[term][(r * q) + c] * unit[c];
        }

        return effects;
    }
}
