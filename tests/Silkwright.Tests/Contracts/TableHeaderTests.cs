using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>Headers of every table that is read, and decimal commas between semicolons.</summary>
public sealed class TableHeaderTests
{
    private const string Coats = "shop,operator,trough,emulsion,solidsPercent,meshCountPerCm,threadUm,printPasses,squeegeePasses,eomUm";

    public static TheoryData<string, string, string, string> Slips => new()
    {
        { "coat", $"{Coats},scren\nA,B,c,D,38,61,64,2,1,12,S1\n", "scren", "screen" },
        { "coat", $"{Coats.Replace("solidsPercent", "solidPercent", StringComparison.Ordinal)}\nA,B,c,D,38,61,64,2,1,12\n", "solidPercent", "solidsPercent" },
        { "strips", "seconds,solidStep,dampp\n60,7,1\n", "dampp", "damp" },
        { "strips", "secnods,solidStep\n60,7\n", "secnods", "seconds" },
        { "fit", "doseMjPerCm2,curedDepthUn\n10,20\n20,30\n40,40\n", "curedDepthUn", "curedDepthUm" },
        { "catalogue", "emulsion,property,value,ground,source,dat\nW,family,diazo,datasheet,s,\n", "dat", "date" },
        { "gauge", "screen,emulsoin,eom (um)\nS1,W,12\n", "emulsoin", "emulsion" },
    };

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_column_written_wrong_is_told_with_the_one_that_was_meant(string table, string text, string written, string meant)
    {
        var fault = Assert.Throws<InputProblemException>(() => Read(table, text));
        var problem = Assert.Single(fault.Problems);
        Assert.Contains(written, problem.What, StringComparison.Ordinal);
        Assert.Contains($"Write {meant} if", problem.Remedy, StringComparison.Ordinal);
        Assert.Contains("line 1", problem.Where, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("coat", $"{Coats},screen,Screen\nA,B,c,D,38,61,64,2,1,12,S1,S2\n")]
    [InlineData("coat", $"{Coats},mine,mine\nA,B,c,D,38,61,64,2,1,12,S1,S2\n")]
    [InlineData("strips", "seconds,damp,damp\n60,1,0\n")]
    [InlineData("gauge", "screen,eom (um),eom (um)\nS1,12,13\n")]
    [InlineData("gauge", "screen,coated (um),total (mil)\nS1,90,4\n")]
    public void A_column_that_is_there_twice_is_refused(string table, string text) =>
        Assert.Contains(Assert.Throws<InputProblemException>(() => Read(table, text)).Problems, problem => problem.What.Contains("twice", StringComparison.Ordinal) || problem.What.Contains("both", StringComparison.Ordinal));

    [Fact]
    public void Columns_of_somebodys_own_are_passed_over_and_a_second_of_one_meaning_is_told()
    {
        Assert.Equal("S1", Assert.Single(CoatTable.Readings($"{Coats},screen,weather,\nA,B,c,D,38,61,64,2,1,12,S1,rain,\n", "t.csv")).Coat.Screen);
        Assert.Contains(GaugeReader.Read("screen,date,time,eom (um)\nS1,2026-11-24,10:00,12\n", "t.csv").Notes, note => note.Text.Contains("time passed over", StringComparison.Ordinal));
    }

    [Fact]
    public void Between_semicolons_a_comma_is_the_decimal_sign_and_between_commas_it_is_not()
    {
        var read = Assert.Single(CoatTable.Readings($"{Coats.Replace(',', ';')}\nA;B;c;D;38,5;61;64;2;1;12,25\n", "t.csv"));
        Assert.Equal((12.25, 38.5), (read.EomUm, read.Coat.Emulsion.SolidsPercent));
        var (strips, _) = StripTable.Read("seconds;solidStep;finestLineUm\n60,5;7;80,25\n", "t.csv");
        Assert.Equal(80.25, Assert.Single(strips).FinestLineUm);
        Assert.Equal(FitDocument.Read("doseMjPerCm2,curedDepthUm\n10.5,20\n20,30.5\n40,40\n", "t.csv").Least.Curve, FitDocument.Read("doseMjPerCm2;curedDepthUm\n10,5;20\n20;30,5\n40;40\n", "t.csv").Least.Curve);
        _ = Assert.Throws<InputProblemException>(() => CoatTable.Readings($"{Coats}\nA,B,c,D,\"38,5\",61,64,2,1,12\n", "t.csv"));
        _ = Assert.Throws<InputProblemException>(() => CoatTable.Readings($"{Coats.Replace(',', ';')}\nA;B;c;D;38;61;64;2;1;1.212,25\n", "t.csv"));
    }

    private static object Read(string table, string text) => table switch
    {
        "coat" => CoatTable.Readings(text, "t.csv"),
        "strips" => StripTable.Read(text, "t.csv"),
        "fit" => FitDocument.Read(text, "t.csv"),
        "catalogue" => CatalogueReader.Read(text, "t.csv"),
        _ => GaugeReader.Read(text, "t.csv"),
    };
}
