using System.Numerics;

namespace Silkwright.Light.Surface;

/// <summary>Least squares with few columns out of many.</summary>
/// <remarks>
/// Orthogonal least squares (Chen, Billings and Luo 1989; from memory): the column that takes most off the residual comes next, all others are made orthogonal to it. How many columns to take is
/// for left-out rows to say.
/// </remarks>
internal static class SparseFit
{
    /// <summary>A column that the chosen ones already make up to this share is no column. [1]</summary>
    private const double LeastNew = 1e-8;

    private static readonly ParallelOptions Cores = new() { MaxDegreeOfParallelism = Environment.ProcessorCount };

    /// <param name="columns">By column, by row, weighted.</param>
    /// <param name="wanted">By row, weighted.</param>
    /// <param name="counts">Numbers of columns wanted, from few to many.</param>
    /// <returns>By number wanted: the chosen columns and their coefficients.</returns>
    public static IReadOnlyList<(int[] Columns, double[] Coefficients)> Of(IReadOnlyList<double[]> columns, double[] wanted, IReadOnlyList<int> counts)
    {
        var rows = wanted.Length;
        var left = columns.Select(column => (double[])column.Clone()).ToArray();
        var lengths = columns.Select(column => Dot(column, column)).ToArray();
        var residual = (double[])wanted.Clone();
        var chosen = new List<int>();
        var directions = new List<double[]>();
        while (chosen.Count < Math.Min(counts[^1], rows / 2) && Next(left, lengths, residual) is >= 0 and var next)
        {
            var direction = left[next];
            var size = 1 / Math.Sqrt(Dot(direction, direction));
            for (var row = 0; row < rows; row++)
                direction[row] *= size;
            chosen.Add(next);
            directions.Add(direction);
            left[next] = [];
            Parallel.For(0, left.Length, Cores, column =>
            {
                if (left[column].Length > 0)
                    TakeOff(left[column], direction);
            });
            TakeOff(residual, direction);
        }

        return [.. counts.Select(count => Math.Min(count, chosen.Count)).Select(count => (chosen.Take(count).ToArray(), Coefficients(columns, wanted, chosen, directions, count)))];
    }

    private static int Next(double[][] left, double[] lengths, double[] residual)
    {
        var gains = new double[left.Length];
        Parallel.For(0, left.Length, Cores, column =>
        {
            if (left[column].Length == 0)
                return;
            var length = Dot(left[column], left[column]);
            if (length <= LeastNew * lengths[column])
                return;
            var along = Dot(left[column], residual);
            gains[column] = along * along / length;
        });
        var next = Array.IndexOf(gains, gains.Max());
        return gains[next] > 0 ? next : -1;
    }

    /// <summary>The chosen columns are the orthogonal directions times an upper triangle; solved backwards.</summary>
    private static double[] Coefficients(IReadOnlyList<double[]> columns, double[] wanted, List<int> chosen, List<double[]> directions, int count)
    {
        var coefficients = new double[count];
        for (var i = count - 1; i >= 0; i--)
        {
            var sum = Dot(directions[i], wanted);
            for (var j = i + 1; j < count; j++)
                sum -= Dot(directions[i], columns[chosen[j]]) * coefficients[j];
            coefficients[i] = sum / Dot(directions[i], columns[chosen[i]]);
        }

        return coefficients;
    }

    private static void TakeOff(double[] column, double[] direction)
    {
        var along = Dot(column, direction);
        for (var row = 0; row < column.Length; row++)
            column[row] -= along * direction[row];
    }

    private static double Dot(double[] a, double[] b)
    {
        var sums = Vector<double>.Zero;
        var row = 0;
        for (; row <= a.Length - Vector<double>.Count; row += Vector<double>.Count)
            sums += new Vector<double>(a, row) * new Vector<double>(b, row);
        var sum = Vector.Sum(sums);
        for (; row < a.Length; row++)
            sum += a[row] * b[row];
        return sum;
    }
}
