using System.Numerics;

namespace Silkwright.Statistics.Mixed;

/// <summary>Small dense matrices in one array, row by row, worked on in place.</summary>
internal static class Factor
{
    /// <summary>Cholesky of the leading rows and columns: L in the lower triangle. False where the matrix is not positive definite.</summary>
    /// <param name="a">size x size; only the lower triangle is read.</param>
    /// <param name="size">Rows, and numbers a row.</param>
    /// <param name="count">Leading rows to take apart.</param>
    /// <param name="least">A pivot no larger than this share of its own diagonal counts as 0.</param>
    public static bool Cholesky(Span<double> a, int size, int count, double least)
    {
        for (var j = 0; j < count; j++)
        {
            var row = a.Slice(j * size, j);
            var diagonal = a[(j * size) + j];
            var pivot = diagonal - Dot(row, row);
            if (!(pivot > least * Math.Abs(diagonal)))
                return false;
            var root = Math.Sqrt(pivot);
            a[(j * size) + j] = root;
            for (var i = j + 1; i < count; i++)
                a[(i * size) + j] = (a[(i * size) + j] - Dot(a.Slice(i * size, j), row)) / root;
        }

        return true;
    }

    /// <summary>Solves L X = B in place.</summary>
    /// <param name="l">Lower triangle, lSize numbers a row.</param>
    /// <param name="lSize">Numbers a row of L.</param>
    /// <param name="count">Rows.</param>
    /// <param name="b">count x columns.</param>
    /// <param name="columns">Columns of B.</param>
    public static void Forward(ReadOnlySpan<double> l, int lSize, int count, Span<double> b, int columns)
    {
        for (var i = 0; i < count; i++)
        {
            var into = b.Slice(i * columns, columns);
            for (var k = 0; k < i; k++)
                AddTimes(into, b.Slice(k * columns, columns), -l[(i * lSize) + k]);
            Scale(into, 1 / l[(i * lSize) + i]);
        }
    }

    /// <summary>Solves Lᵀ X = B in place.</summary>
    public static void Backward(ReadOnlySpan<double> l, int lSize, int count, Span<double> b, int columns)
    {
        for (var i = count - 1; i >= 0; i--)
        {
            var into = b.Slice(i * columns, columns);
            for (var k = i + 1; k < count; k++)
                AddTimes(into, b.Slice(k * columns, columns), -l[(k * lSize) + i]);
            Scale(into, 1 / l[(i * lSize) + i]);
        }
    }

    /// <summary>Takes Yᵀ Y from the lower triangle of a matrix at the rows and columns named.</summary>
    /// <param name="s">size x size.</param>
    /// <param name="size">Numbers a row of s.</param>
    /// <param name="at">Rising places in s of Y's columns.</param>
    /// <param name="y">rows x at.Length.</param>
    /// <param name="rows">Rows of Y.</param>
    public static void TakeProduct(Span<double> s, int size, ReadOnlySpan<int> at, ReadOnlySpan<double> y, int rows)
    {
        var columns = at.Length;
        for (var i = 0; i < columns; i++)
        {
            var into = s.Slice(at[i] * size, size);
            for (var r = 0; r < rows; r++)
            {
                var row = y.Slice(r * columns, columns);
                var times = row[i];
                if (times == 0)
                    continue;
                for (var j = 0; j <= i; j++)
                    into[at[j]] -= times * row[j];
            }
        }
    }

    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = 0.0;
        var i = 0;
        if (a.Length >= Vector<double>.Count)
        {
            var sums = Vector<double>.Zero;
            for (; i <= a.Length - Vector<double>.Count; i += Vector<double>.Count)
                sums += new Vector<double>(a[i..]) * new Vector<double>(b[i..]);
            sum = Vector.Sum(sums);
        }

        for (; i < a.Length; i++)
            sum += a[i] * b[i];
        return sum;
    }

    /// <summary>into += times x other.</summary>
    public static void AddTimes(Span<double> into, ReadOnlySpan<double> other, double times)
    {
        var i = 0;
        for (; i <= into.Length - Vector<double>.Count; i += Vector<double>.Count)
            (new Vector<double>(into[i..]) + (new Vector<double>(other[i..]) * times)).CopyTo(into[i..]);
        for (; i < into.Length; i++)
            into[i] += times * other[i];
    }

    private static void Scale(Span<double> row, double by)
    {
        for (var i = 0; i < row.Length; i++)
            row[i] *= by;
    }
}
