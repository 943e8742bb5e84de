using CsCheck;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Ink;
using Silkwright.Mesh;

namespace Silkwright.Tests.Ink;

public sealed class InkDepositTests
{
    private static readonly MeshFabric General = new(61, 64);

    /// <summary>By definition: 25 cm³/m² over 0.10 m², 500 prints, full transfer, is 1.25 L; at 1 g/cm³ that weighs 1250 g.</summary>
    [Fact]
    public void Full_transfer_of_25_cm3_per_m2_over_a_tenth_of_a_square_metre()
    {
        // Open area of 100/cm with 50 µm thread is exactly a quarter; 100 µm of fabric make 25 cm³/m².
        var result = InkDeposit.Of(Print(new MeshFabric(100, 50) { FabricThicknessUm = 100 }) with
        {
            AreaCm2 = Exact(1000),
            CoveragePercent = Exact(100),
            Impressions = 500,
            TransferPercent = Exact(100),
            DensityGPerCm3 = Exact(1),
        });

        Assert.Equal(25, result.WetDepositUm.Value, 1e-9);
        Assert.Equal(1250, result.InkGrams.Value, 1e-9);
        Assert.Equal(2.5, result.GramsPerImpression.Value, 1e-9);
    }

    /// <summary>300 to 800 prints a kilogram are quoted for plastisol (a trade note): fronts of 30 x 40 cm, 40 and 50 % covered.</summary>
    [Theory]
    [InlineData(61, 64, 50)]
    [InlineData(43, 80, 40)]
    public void A_kilogram_of_plastisol_prints_300_to_800_fronts(double countPerCm, double threadUm, double coveragePercent)
    {
        var grams = InkDeposit.Of(Print(new MeshFabric(countPerCm, threadUm)) with
        {
            AreaCm2 = Exact(1200), CoveragePercent = Exact(coveragePercent),
        }).GramsPerImpression;

        Assert.InRange(1000 / grams.Value, 300, 800);
    }

    /// <summary>A left-chest mark takes 1 to 2 g (the same note): 10 x 10 cm solid in white of 1.5 g/cm³, two strokes on 34/cm.</summary>
    [Fact]
    public void A_left_chest_mark_takes_1_to_2_g() => Assert.InRange(
        InkDeposit.Of(Print(new MeshFabric(34, 100)) with
        {
            AreaCm2 = Exact(100), CoveragePercent = Exact(100), Strokes = 2, DensityGPerCm3 = Exact(1.5),
        }).GramsPerImpression.Value,
        1,
        2);

    [Fact]
    public void Defaults_are_told_and_what_is_unknown_is_left_out()
    {
        var result = InkDeposit.Of(Print(General));

        Assert.Null(result.DryDepositUm);
        Assert.Null(result.LineDepositUm);
        Assert.Contains(result.Notes, note => note.Text.Contains("60 to 85 %", StringComparison.Ordinal) && note.Ground == Ground.CommonPractice);
        Assert.Contains(result.Notes, note => note.Text.Contains("density", StringComparison.Ordinal));
        Assert.Contains(result.Notes, note => note.Text.Contains("dry deposit", StringComparison.Ordinal));
        Assert.InRange(result.WetDepositUm.Value, 0.6 * 36.2, 0.85 * 36.9);
    }

    [Fact]
    public void Dry_is_wet_times_volume_solids()
    {
        var result = InkDeposit.Of(Print(General) with { VolumeSolidsPercent = Exact(40) });

        Assert.Equal(0.4 * result.WetDepositUm.Value, result.DryDepositUm!.Value, 1e-9);
    }

    /// <summary>The stencil adds half to all of its height to lines narrower than 1 to 2 mm, little to large areas. Common practice, no source.</summary>
    [Fact]
    public void A_narrow_line_gains_from_the_stencil_and_a_broad_one_does_not()
    {
        var narrow = InkDeposit.Of(Print(General) with { FinestLineUm = 500 });
        var broad = InkDeposit.Of(Print(General) with { FinestLineUm = 3000 });

        Assert.InRange(narrow.LineDepositUm!.Value - narrow.WetDepositUm.Value, 0.5 * 12, 12);
        Assert.Equal(broad.WetDepositUm.Value, broad.LineDepositUm!.Value, 1e-9);
        Assert.Equal(broad.WetDepositUm.Value, narrow.WetDepositUm.Value, 1e-9);
    }

    [Fact]
    public void More_of_anything_never_uses_less_ink() =>
        Gen.Select(Gen.Double[1, 3], Gen.Int[0, 4]).Sample((factor, which) =>
        {
            var print = Print(General);
            var more = which switch
            {
                0 => print with { AreaCm2 = print.AreaCm2.Times(factor) },
                1 => print with { CoveragePercent = print.CoveragePercent.Map(x => Math.Min(100, x * factor)) },
                2 => print with { Impressions = (long)(print.Impressions * factor) },
                3 => print with { EomUm = print.EomUm.Times(factor), FinestLineUm = 300 },
                _ => print with { Strokes = 1 + (int)factor },
            };
            return InkDeposit.Of(more).InkGrams.Value >= InkDeposit.Of(print).InkGrams.Value - 1e-9
                && InkDeposit.Of(more).InkGrams.High >= InkDeposit.Of(print).InkGrams.High - 1e-9;
        });

    [Fact]
    public void Impossible_cases_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => InkDeposit.Of(Print(General) with { Impressions = -1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => InkDeposit.Of(Print(General) with { Strokes = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => InkDeposit.Of(Print(General) with { CoveragePercent = Exact(101) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => InkDeposit.Of(Print(General) with { TransferPercent = Exact(-1) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => InkDeposit.Of(Print(new MeshFabric(100, 100))));
    }

    private static InkCase Print(MeshFabric mesh) => new()
    {
        Mesh = mesh,
        EomUm = Exact(12),
        Ink = InkKind.Plastisol,
        CoveragePercent = Exact(35),
        AreaCm2 = Exact(900),
        Impressions = 600,
    };

    private static Estimate Exact(double value) => Estimate.Exact(value, Ground.MeasuredHere);
}
