using System.Globalization;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Ink;

/// <summary>Ink laid and used.</summary>
public static class InkDeposit
{
    /// <summary>Grams of ink a litre weighs at 1 g/cm³, and the like: µm over cm² in cm³. [cm³/(µm·cm²)]</summary>
    private const double Cm3PerUmCm2 = 1e-4;

    /// <summary>What a run lays and uses.</summary>
    /// <remarks>
    /// docs/engines/ink.md, equations 1 to 4. Ink kept in the screen, spilt or thrown away is not in it. Weighing a garment
    /// before and after printing, before cure, is better than any of this.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the fabric cannot be woven.</exception>
    public static InkResult Of(InkCase print)
    {
        ThrowIfOutOfRange(print);
        var mesh = WovenMesh.Of(print.Mesh);
        var density = print.DensityGPerCm3 ?? InkDefaults.DensityGPerCm3(print.Ink);
        Uncertain[] inputs =
        [
            new("ink volume of the mesh", mesh.InkVolumeCm3PerM2),
            new("share that leaves the mesh", print.TransferPercent ?? InkDefaults.TransferPercent),
            new("strokes of the squeegee", StrokesThatCount(print.Strokes)),
            new("emulsion over mesh", print.EomUm),
            new("stencil's share of a large area", InkDefaults.StencilShareOfArea),
            new("coverage", print.CoveragePercent),
            new("area of the film", print.AreaCm2),
            new("density of the ink", density),
        ];

        var wet = Propagation.Through(Wet, inputs, floor: 0).Estimate;
        var grams = Propagation.Through(GramsPerImpression, inputs, floor: 0).Estimate;
        return new InkResult
        {
            WetDepositUm = wet,
            LineDepositUm = print.FinestLineUm is { } width ? LineDeposit(wet, print.EomUm, width) : null,
            DryDepositUm = print.VolumeSolidsPercent is { } solids
                ? Propagation.Through(x => InkFilm.DryUm(x[0], x[1]), [new("wet deposit", wet), new("solids by volume", solids)]).Estimate
                : null,
            InkGrams = grams.Times(print.Impressions),
            GramsPerImpression = grams,
            Notes = NotesOn(print, mesh, density),
        };

        static double Wet(IReadOnlyList<double> x) => (x[0] * x[1] / 100 * x[2]) + (x[3] * x[4]);

        static double GramsPerImpression(IReadOnlyList<double> x) => Wet(x) * x[6] * (x[5] / 100) * Cm3PerUmCm2 * x[7];
    }

    private static Estimate LineDeposit(Estimate wet, Estimate eomUm, double widthUm)
    {
        var felt = Math.Clamp(
            (InkDefaults.BroadLineUm - widthUm) / (InkDefaults.BroadLineUm - InkDefaults.NarrowLineUm), 0, 1);
        return Propagation.Through(
            x => x[0] + (felt * x[1] * x[2]),
            [
                new("wet deposit", wet),
                new("emulsion over mesh", eomUm),
                new("stencil's share of a line", InkDefaults.StencilShareOfLine),
            ]).Estimate;
    }

    private static Estimate StrokesThatCount(int strokes) => new(
        strokes, 1 + (InkDefaults.LeastOfFurtherStroke * (strokes - 1)), strokes, Ground.CommonPractice);

    private static List<Note> NotesOn(InkCase print, WovenMesh mesh, Estimate density)
    {
        var notes = new List<Note>(mesh.Notes);
        if (print.TransferPercent is null)
            notes.Add(new Note("60 to 85 % of the mesh's theoretical volume is taken to reach the garment.", Ground.CommonPractice));
        if (print.DensityGPerCm3 is null)
        {
            var white = print.Ink == InkKind.Plastisol ? " White lies at 1.4 to 1.6." : string.Empty;
            notes.Add(new Note(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The ink's density is not given: {density.Value:0.00} g/cm³ ({density.Low:0.00} to {density.High:0.00}).{white}"),
                density.Ground));
        }

        if (print.VolumeSolidsPercent is null)
            notes.Add(new Note("The dry deposit is left out: the ink's solids by volume are not given."));
        notes.Add(new Note(
            string.Create(
                CultureInfo.InvariantCulture,
                $"A published rule fitted to prints puts one stroke's wet deposit at {EmpiricalDeposit.WetUm(mesh):0.0} µm for this mesh; it and the theoretical volume disagree."),
            Ground.MeasuredElsewhere));
        return notes;
    }

    private static void ThrowIfOutOfRange(InkCase print)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(print.EomUm.Low, nameof(print));
        ArgumentOutOfRangeException.ThrowIfNegative(print.AreaCm2.Low, nameof(print));
        ArgumentOutOfRangeException.ThrowIfNegative(print.Impressions, nameof(print));
        ArgumentOutOfRangeException.ThrowIfLessThan(print.Strokes, 1, nameof(print));
        if (print.FinestLineUm is { } width)
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width, nameof(print));
        ThrowUnlessPercent(print.CoveragePercent);
        if (print.TransferPercent is { } transfer)
            ThrowUnlessPercent(transfer);

        static void ThrowUnlessPercent(Estimate percent)
        {
            if (percent.Low < 0 || percent.High > 100)
                throw new ArgumentOutOfRangeException(nameof(print), percent, "A share lies between 0 and 100 %.");
        }
    }
}
