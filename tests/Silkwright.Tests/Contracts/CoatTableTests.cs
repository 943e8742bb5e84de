using Silkwright.Coating;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

public sealed class CoatTableTests
{
    private const string Header = "shop,operator,trough,emulsion,solidsPercent,meshCountPerCm,threadUm,printPasses,squeegeePasses,eomUm,strokes,edgeRadiusMm,screen,point,repeat,meshUm,totalUm,measuredOn";

    [Fact]
    public void A_row_is_read_with_all_it_may_say()
    {
        var row = Read("Harbour,Ada,long,Copper,38,61,64,2,1,14.2,P S | P,1.4,H1,3,2,98,112.2,2026-11-24")[0];

        Assert.Equal((2, "Harbour", "Ada", "long", 1.4, true), (row.Line, row.Coat.Shop, row.Coat.Operator, row.Coat.Trough.Id, row.Coat.Trough.EdgeRadiusMm, row.Coat.EdgeIsKnown));
        Assert.Equal(("Copper", 38.0, "61/64"), (row.Coat.Emulsion.Id, row.Coat.Emulsion.SolidsPercent, row.Coat.Mesh.Fabric.Name));
        Assert.Equal([new(StrokeSide.Print), new(StrokeSide.Squeegee), new(StrokeSide.Print, AfterDrying: true)], row.Coat.Strokes);
        Assert.Equal((14.2, "H1", "3", "2", new DateOnly(2026, 11, 24)), (row.EomUm, row.Coat.Screen, row.Point, row.Repeat, row.MeasuredOn));
    }

    [Fact]
    public void Semicolons_empty_fields_and_counted_strokes_are_read_too()
    {
        var row = CoatTable.Readings("Emulsion;shop;operator;trough;solidsPercent;meshCountPerCm;threadUm;printPasses;squeegeePasses;eomUm;colour\nCopper;Harbour;;;;61;64;2;1;14.2;blue\n", "r.csv")[0];

        Assert.Equal((null, "", false, null), (row.Coat.Operator, row.Coat.Trough.Id, row.Coat.EdgeIsKnown, row.Coat.Emulsion.SolidsPercent));
        Assert.Equal([new(StrokeSide.Print), new(StrokeSide.Print), new(StrokeSide.Squeegee)], row.Coat.Strokes);
    }

    [Fact]
    public void Coated_less_bare_stands_in_for_the_reading() =>
        Assert.Equal(14.5, Read("Harbour,Ada,long,Copper,38,61,64,2,1,,,1.4,H1,3,2,98,112.5,")[0].EomUm!.Value, 1e-9);

    [Theory]
    [InlineData("Harbour,Ada,long,Copper,0.38,61,64,2,1,14,,,,,,,,", 5, "weight in percent")]
    [InlineData("Harbour,Ada,long,Copper,38,305,64,2,1,14,,,,,,,,", 6, "2.54")]
    [InlineData("Harbour,Ada,long,Copper,38,64,160,2,1,14,,,,,,,,", 6, "swapped")]
    [InlineData("Harbour,Ada,long,Copper,38,61,64,0,0,14,,,,,,,,", 8, "strokes")]
    [InlineData("Harbour,Ada,long,Copper,38,61,64,2,1,\"14,2\",,,,,,,,", 10, "µm")]
    [InlineData("Harbour,Ada,long,Copper,38,61,64,2,1,,,,,,,,,", 10, "totalUm")]
    [InlineData("Harbour,Ada,long,Copper,38,61,64,2,1,-8,,,,,,,,", 10, "zero")]
    [InlineData("Harbour,Ada,long,Copper,38,61,64,2,1,14,,,H1,1,1,112,98,", 17, "swapped")]
    [InlineData("Harbour,Ada,long,Copper,38,61,64,2,1,14,p P,,,,,,,", 11, "first stroke")]
    [InlineData(",Ada,long,Copper,38,61,64,2,1,14,,,,,,,,", 1, "shop")]
    public void A_row_that_cannot_be_is_refused_with_line_column_and_remedy(string row, int column, string remedy)
    {
        var fault = Assert.Throws<InputProblemException>(() => Read("Harbour,Ada,long,Copper,38,61,64,2,1,14,,,,,,,,", row));

        Assert.Contains(fault.Problems, problem => problem.Where == $"r.csv: line 3, column {column}" && problem.Remedy.Contains(remedy, StringComparison.Ordinal));
    }

    [Fact]
    public void All_faults_are_told_at_once_and_a_missing_column_by_its_name()
    {
        Assert.Equal(2, Assert.Throws<InputProblemException>(() => Read("Harbour,A,t,C,3,61,64,2,1,14,,,,,,,,", "Harbour,A,t,C,38,61,64,2,x,14,,,,,,,,")).Problems.Count);
        Assert.Contains("threadUm", Assert.Throws<InputProblemException>(() => CoatTable.Cases(Header.Replace("threadUm,", "", StringComparison.Ordinal) + "\n", "c.csv")).Problems[0].What, StringComparison.Ordinal);
    }

    private static IReadOnlyList<CoatRow> Read(params string[] rows) => CoatTable.Readings($"{Header}\n{string.Join('\n', rows)}\n", "r.csv");
}
