using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Silkwright.Gauging;

/// <summary>Sums of squares of an unbalanced study, each of what the other effects leave over, and the variances they are expected to hold.</summary>
/// <remarks>
/// C. R. Henderson, Biometrics 9 (1953) 226, method 3: E[SS] = σₑ² rank + Σ σₖ² ‖Qᵀ Zₖ‖², with Q an orthonormal basis of what the effect adds and Zₖ the indicators of the
/// other random effects. In a balanced study these are the mean squares of the analysis of variance.
/// </remarks>
internal sealed class FittedSums
{
    private const double LeastLeft = 1e-9;

    private readonly (double Own, double Interaction) part;
    private readonly (double Own, double Interaction) hand;
    private readonly double crossed;

    private FittedSums(StudyLayout layout, Matrix<double> partsLast, Matrix<double> handsLast)
    {
        var (p, o, n) = (layout.Parts.Count, layout.Operators.Count, layout.Readings.Count);
        var mean = layout.Readings.Average(reading => reading.ValueUm);
        var y = Vector<double>.Build.DenseOfEnumerable(layout.Readings.Select(reading => reading.ValueUm - mean));
        var (ofPart, ofHand) = (Last(partsLast, p - 1), Last(handsLast, o - 1));
        Part = new AnovaRow(Explained(ofPart, y), p - 1);
        Operator = new AnovaRow(Explained(ofHand, y), o - 1);
        part = (Held(ofPart, layout.PartOf, p), Held(ofPart, layout.CellOf, p * o));
        hand = (Held(ofHand, layout.OperatorOf, o), Held(ofHand, layout.CellOf, p * o));
        var additive = y.DotProduct(y) - Explained(handsLast, y);
        var filled = layout.CellCounts.Count(count => count > 0);
        var within = layout.Readings.Select((reading, i) => (Cell: layout.CellOf[i], reading.ValueUm)).GroupBy(pair => pair.Cell, pair => pair.ValueUm)
            .Sum(cell => cell.Sum(value => (value - cell.Average()) * (value - cell.Average())));
        var free = filled - p - o + 1;
        if (!layout.HasRepeats || free == 0)
        {
            (Interaction, Error) = (new AnovaRow(0, 0), new AnovaRow(Math.Max(0, additive), n - p - o + 1));
            return;
        }

        (Interaction, Error) = (new AnovaRow(Math.Max(0, additive - within), free), new AnovaRow(within, n - filled));
        crossed = n - Held(handsLast, layout.CellOf, p * o);
    }

    public AnovaRow Part { get; }

    public AnovaRow Operator { get; }

    /// <summary>None where there is nothing to tell it from the error.</summary>
    public AnovaRow Interaction { get; }

    public AnovaRow Error { get; }

    /// <returns>None where no chain of readings ties all parts and operators together.</returns>
    public static FittedSums? Of(StudyLayout layout)
    {
        var (p, o) = (layout.Parts.Count, layout.Operators.Count);
        return layout.Readings.Count > p + o - 1
            && Basis(layout, layout.OperatorOf, o, layout.PartOf, p) is { } partsLast
            && Basis(layout, layout.PartOf, p, layout.OperatorOf, o) is { } handsLast
            ? new FittedSums(layout, partsLast, handsLast)
            : null;
    }

    /// <summary>The variances that mean squares stand for, each at least 0. [µm²]</summary>
    public VarianceParts VariancesOf(double ofPart, double ofHand, double ofInteraction, double error)
    {
        var interaction = Interaction.Freedom > 0 ? Math.Max(0, Interaction.Freedom * (ofInteraction - error) / crossed) : 0;
        return new VarianceParts(error, Own(Operator, ofHand, hand), interaction, Own(Part, ofPart, part));

        double Own(AnovaRow row, double meanSquare, (double Own, double Interaction) held) => row.Freedom == 0
            ? 0
            : Math.Max(0, ((row.Freedom * (meanSquare - error)) - (held.Interaction * interaction)) / held.Own);
    }

    /// <summary>An orthonormal basis of both factors' columns, what the second adds in its last columns; none where it cannot be told.</summary>
    private static Matrix<double>? Basis(StudyLayout layout, int[] first, int firstLevels, int[] second, int secondLevels)
    {
        var x = Matrix<double>.Build.Dense(layout.Readings.Count, firstLevels + secondLevels - 1, (i, j) =>
            j < firstLevels ? (first[i] == j ? 1 : 0) : (second[i] == j - firstLevels + 1 ? 1 : 0));
        var qr = x.QR(QRMethod.Thin);
        return Enumerable.Range(0, x.ColumnCount).All(j => Math.Abs(qr.R[j, j]) > LeastLeft) ? qr.Q : null;
    }

    /// <summary>‖Qᵀ Z‖² for the indicators Z of a factor.</summary>
    private static double Held(Matrix<double>? basis, int[] levelOf, int levels)
    {
        if (basis is null)
            return 0;
        var sums = new double[levels * basis.ColumnCount];
        for (var i = 0; i < basis.RowCount; i++)
        {
            for (var j = 0; j < basis.ColumnCount; j++)
                sums[(levelOf[i] * basis.ColumnCount) + j] += basis[i, j];
        }

        return sums.Sum(sum => sum * sum);
    }

    /// <summary>Its last columns; none where they are none, which a matrix cannot be.</summary>
    private static Matrix<double>? Last(Matrix<double> basis, int columns) =>
        columns == 0 ? null : basis.SubMatrix(0, basis.RowCount, basis.ColumnCount - columns, columns);

    private static double Explained(Matrix<double>? basis, Vector<double> y) => basis?.TransposeThisAndMultiply(y) is { } along ? along.DotProduct(along) : 0;
}
