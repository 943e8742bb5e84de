using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

public sealed class GaugeReaderTests
{
    private const string Header = "screen,operator,coated (um)\n";

    [Fact]
    public void Columns_are_found_by_their_headers_and_units_by_header_column_cell_or_choice()
    {
        // 3.2 mil = 81.28 µm by definition of the inch
        Assert.Equal(81.28, One("Screen;Thickness [mil]\nS-1;3.2\n").CoatedUm!.Value, 1e-9);
        Assert.Equal(81.28, One("part,reading,unit\nS-1,3.2,mil\n").CoatedUm!.Value, 1e-9);
        Assert.Equal(81.28, One("part,total\nS-1,3.2 mil\n").CoatedUm!.Value, 1e-9);
        Assert.Equal(81.28, GaugeReader.Read("frame,value\nS-1,3.2\n", "f.csv", "mil").Entries[0].CoatedUm!.Value, 1e-9);
        Assert.Equal(63.4, One("screen;coatedUm\nS-1;63,4\n").CoatedUm);
        var entry = One("screen,place,operator,trough,emulsion,mesh count,thread (um),strokes,date,totalUm,meshUm\nS-1,5,Ines,round,Wren 47,61,64,p s,2026-11-24 08:15,98.5,87\n".Replace("totalUm", "coated_um", StringComparison.Ordinal));
        Assert.Equal((98.5, 87.0, 11.5), (entry.CoatedUm, entry.BareUm, entry.OverMeshUm));
        Assert.Equal(("S-1", "5", "Ines", "round", "Wren 47", new DateOnly(2026, 11, 24)), (entry.Screen, entry.Place, entry.Operator, entry.Trough, entry.Emulsion, entry.On));
        Assert.Equal((61, 64, "p s"), (entry.MeshCountPerCm, entry.ThreadUm, entry.Strokes));
    }

    [Fact]
    public void A_file_without_a_unit_asks_for_one_rather_than_guess()
    {
        var fault = Assert.Throws<InputProblemException>(() => GaugeReader.Read("screen,coated\nS-1,3.2\n", "f.csv"));
        Assert.Contains("unit", fault.Problems[0].What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("S-1,Ines,3.2", "looks like mil")]
    [InlineData("S-1,Ines,abc", "can't be read")]
    [InlineData("S-1,Ines,", "no thickness")]
    [InlineData("S-1,Ines,9000", "no thickness of a screen")]
    public void A_bad_row_is_given_back_with_its_line_and_what_to_do(string row, string why)
    {
        var file = GaugeReader.Read($"{Header}S-1,Ines,80.1\nS-1,Ines,81.3\nS-1,Ines,79.6\nS-1,Ines,80.8\n{row}\n", "f.csv");
        Assert.Equal(4, file.Entries.Count);
        var refused = Assert.Single(file.Refused);
        Assert.Equal(6, refused.Line);
        Assert.Contains(why, string.Join(' ', refused.Problems.Select(problem => problem.What)), StringComparison.OrdinalIgnoreCase);
        Assert.All(refused.Problems, problem => Assert.False(string.IsNullOrWhiteSpace(problem.Remedy)));
        Assert.Contains(row, file.RefusedText, StringComparison.Ordinal);
    }

    [Fact]
    public void Thinner_than_the_bare_mesh_is_given_back_and_a_little_thinner_is_flagged()
    {
        var file = GaugeReader.Read("screen,coated (um),bare (um)\nS-1,70,78\nS-2,77.4,78\nS-3,90,78\n", "f.csv");
        Assert.Equal(2, file.Refused.Single().Line);
        Assert.Equal(3, file.Flagged.Single().Line);
        Assert.Equal(2, file.Entries.Count);
        Assert.Equal(2, GaugeReader.Read($"{Header}S-1,Ines,60\n", "f.csv", bareUm: 78).Refused.Single().Line);
    }

    [Fact]
    public void The_same_row_twice_is_given_back_where_it_is_named_and_flagged_where_it_may_be_a_repeat()
    {
        Assert.Equal(3, GaugeReader.Read("screen,place,coated (um)\nS-1,5,80\nS-1,5,80\n", "f.csv").Refused.Single().Line);
        var repeats = GaugeReader.Read($"{Header}S-1,Ines,80\nS-1,Ines,80\n", "f.csv");
        Assert.Equal((2, 3), (repeats.Entries.Count, repeats.Flagged.Single().Line));
    }

    [Fact]
    public void What_was_given_back_can_be_put_right_and_read_again()
    {
        var file = GaugeReader.Read($"{Header}\"S-1, left\",Ines,80\n\"=S-2\",Bram,abc\n", "f.csv");
        var again = GaugeReader.Read(file.RefusedText.Replace("abc", "81", StringComparison.Ordinal), "f.csv");
        Assert.Equal(81, again.Entries.Single().CoatedUm);
        Assert.DoesNotContain(",=", "," + file.RefusedText, StringComparison.Ordinal);
    }

    /// <summary>Every row of a file is in one of the two lists: random rows, seeded.</summary>
    [Fact]
    public void No_row_is_lost()
    {
        var random = new Random(2);
        string[] fields = ["80", "3.1", "", "x", "-4", "1e3", "80;1", "\"81\"", "79.9 um", "3.2 mil", "NaN", "999999"];
        for (var i = 0; i < 300; i++)
        {
            var rows = Enumerable.Range(0, random.Next(1, 12)).Select(_ => $"S-{random.Next(3)},Ines,{fields[random.Next(fields.Length)]}").ToArray();
            var file = GaugeReader.Read(Header + string.Join('\n', rows), "f.csv");
            Assert.Equal(rows.Length, file.Entries.Count + file.Refused.Count);
        }
    }

    [Fact]
    public void Coats_are_exported_as_a_shop_reads_them()
    {
        var file = GaugeReader.Read("screen,trough,emulsion,mesh count,thread (um),strokes,date,coated (um),bare (um)\nS-1,round,Wren 47,61,64,P S,2026-11-24,100,87\nS-1,round,Wren 47,61,64,P S,2026-11-24,102,88\n", "f.csv");
        var coat = GaugeReadDocument.Of(file)["readings"]!["coat"]!.ToJsonString();
        var shop = ShopReader.Read($$"""{ "emulsions":[{"id":"Wren 47","family":"photopolymer"}],"troughs":[{"id":"round","edgeRadiusMm":1.5}],"readings":{"coat": {{coat}} } }""", "shop");
        var reading = Assert.Single(shop.CoatReadings);
        Assert.Equal((13.5, "round", new DateOnly(2026, 11, 24)), (reading.EomUm, reading.TroughId, reading.On));
    }

    private static Silkwright.Gauging.GaugeEntry One(string text) => Assert.Single(GaugeReader.Read(text, "f.csv").Entries);
}
