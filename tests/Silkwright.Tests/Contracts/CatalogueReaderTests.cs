using CsCheck;
using Silkwright.Catalogue;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>Catalogues as people save them. Quoting as RFC 4180 has it; units by their definitions.</summary>
public sealed class CatalogueReaderTests
{
    private const string Header = "emulsion,property,value,ground,source,date";

    [Theory]
    [InlineData("A,solidsPercent,36,datasheet,sheet,2025-01-31\n")]
    [InlineData("A,solidsPercent,36%,datasheet,sheet,2025-01-31")]
    [InlineData("\"A\",\"solidsPercent\",\"36 %\",\"data sheet\",\"sheet\",\"2025-01-31\"\r\n\r\n,,,,,\r\n")]
    [InlineData("a , SOLIDSPERCENT , 36 , Datasheet , Sheet , 2025-01-31\r")]
    public void One_line_is_read_however_it_is_quoted_spaced_and_ended(string line)
    {
        var entry = Only($"{Header}\r\n{line}");

        Assert.Equal((CatalogueProperties.Solids, 36.0, Ground.Datasheet, new DateOnly(2025, 1, 31)), (entry.Property, entry.Value.Number!.Value, entry.Ground, entry.Date!.Value));
    }

    [Fact]
    public void Semicolons_a_byte_order_mark_other_columns_and_any_order_are_taken()
    {
        var entry = Only("\uFEFFnote;date;source;ground;value;property;Emulsion\n\"x, y; z\";;\"sheet; \"\"second\"\" edition\";measuredHere;1.05g/cm3;densityGPerCm3;A\n");

        Assert.Equal(("sheet; \"second\" edition", 1.05, (DateOnly?)null), (entry.Source, entry.Value.Number!.Value, entry.Date));
    }

    /// <summary>Definitions: 1 Pa·s = 1000 cP, 1 mJ/cm² = 10 J/m², 1 week = 7 d, 1 mil = 25.4 µm, 1 lb = 453.59237 g (exact), 86 °F = 30 °C.</summary>
    [Theory]
    [InlineData("viscosityPaS", "4600cP", 4.6, null)]
    [InlineData("criticalDoseMjPerCm2", "550J/m2", 55, null)]
    [InlineData("potLifeDays", "6weeks", 42, 21.0)]
    [InlineData("potLifeDays at 70F", "40", 40, 21.0)]
    [InlineData("potLifeDays at 86F", "9d", 9, 30.0)]
    [InlineData("filmThicknessUm", "2mil", 50.8, null)]
    [InlineData("price at 10lb", "98", 98, 4535.9237)]
    [InlineData("price at 0.9kg", "23", 23, 900.0)]
    [InlineData("sensitiveToNm", "430nm", 430, null)]
    public void Values_take_their_units_and_a_plain_number_is_in_the_unit_of_the_name(string property, string value, double kept, double? at)
    {
        var entry = Only($"{Header}\nA,{property},{value},datasheet,sheet,");

        Assert.Equal(kept, entry.Value.Number!.Value, 1e-9 * kept);
        Assert.Equal(at is null, entry.At is null);
        Assert.Equal(at ?? 0, entry.At ?? 0, 1e-6);
    }

    [Theory]
    [InlineData("A,family,dual-cure,datasheet,s,", "dualCure")]
    [InlineData("A,family,Capillary Film,datasheet,s,", "capillaryFilm")]
    [InlineData("A,seeThrough,YES,measured here,s,", "yes")]
    [InlineData("A,hardening,Needed,commonPractice,s,", "needed")]
    public void Words_are_read_in_any_case_and_spelling(string line, string word) => Assert.Equal(word, Only($"{Header}\n{line}").Value.Word);

    [Theory]
    [InlineData("A,solids,36,datasheet,s,", "column 2 (property)", "no property")]
    [InlineData("A,solidsPercent,136,datasheet,s,", "column 3 (value)", "outside 10 to 100")]
    [InlineData("A,solidsPercent,NaN,datasheet,s,", "column 3 (value)", "can't be read")]
    [InlineData("A,solidsPercent,1e999,datasheet,s,", "column 3 (value)", "not a number that can be reckoned with")]
    [InlineData("A,solidsPercent,\"36,5\",datasheet,s,", "column 3 (value)", "can't be read")]
    [InlineData("A,solidsPercent,36um,datasheet,s,", "column 3 (value)", "not a unit")]
    [InlineData("A,shelfLifeMonths,12months,datasheet,s,", "column 3 (value)", "'months' is not a unit")]
    [InlineData("A,family,miracle,datasheet,s,", "column 3 (value)", "no answer to family")]
    [InlineData("A,price,12,datasheet,s,", "column 2 (property)", "is told at")]
    [InlineData("A,price at 900,12,datasheet,s,", "column 2 (property)", "no unit")]
    [InlineData("A,potLifeDays at 99C,12,datasheet,s,", "column 2 (property)", "outside -30 to 60")]
    [InlineData("A,solidsPercent at 21C,36,datasheet,s,", "column 2 (property)", "without a circumstance")]
    [InlineData("A,solidsPercent,36,model,s,", "column 4 (ground)", "no ground")]
    [InlineData("A,solidsPercent,36,0,s,", "column 4 (ground)", "no ground")]
    [InlineData("A,solidsPercent,36,datasheet,,", "column 5 (source)", "source is missing")]
    [InlineData(",solidsPercent,36,datasheet,s,", "column 1 (emulsion)", "emulsion is missing")]
    [InlineData("A,solidsPercent,36,datasheet,s,31/01/2025", "column 6 (date)", "not a date")]
    [InlineData("A,solidsPercent,36,datasheet,sheet, page 2,2025-01-31", "column 7", "7 fields")]
    [InlineData("A,solidsPercent,36,datasheet,\"sheet\" 2,", "column 5", "after the closing quote")]
    [InlineData("A,solidsPercent,36,datasheet,\"sheet,", "column 5", "never closed")]
    [InlineData("A\u001b[2J,solidsPercent,36,datasheet,s,", "column 1 (emulsion)", "cannot be seen")]
    public void Faults_are_told_with_line_column_and_remedy(string line, string where, string what)
    {
        var problem = Faults($"{Header}\nB,solidsPercent,30,datasheet,s,\n{line}")[0];

        Assert.Equal($"c.csv: line 3, {where}", problem.Where);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Remedy);
    }

    [Fact]
    public void Every_fault_is_told_at_once() =>
        Assert.Equal(5, Faults($"{Header}\nA,solids,1,model,,x\nA,solidsPercent,1,datasheet,s,").Count);

    [Fact]
    public void Missing_and_doubled_columns_are_told()
    {
        var faults = Faults("emulsion,property,value,value\nA,solidsPercent,36,37");

        Assert.Equal(["The column value is there twice.", "There is no column ground.", "There is no column source.", "There is no column date."], faults.Select(fault => fault.What));
        Assert.All(faults, fault => Assert.StartsWith("c.csv: line 1, column ", fault.Where, StringComparison.Ordinal));
    }

    [Fact]
    public void A_source_may_say_one_thing_once()
    {
        var faults = Faults($"{Header}\nA,solidsPercent,36,datasheet,sheet,2025-01-31\na,solidsPercent,36%,datasheet,SHEET,2025-01-31\nA,solidsPercent,37,datasheet,sheet,2025-01-31\nA,solidsPercent,37,datasheet,sheet,2025-02-28");

        Assert.Equal(["c.csv: line 3, column 3 (value)", "c.csv: line 4, column 3 (value)"], faults.Select(fault => fault.Where));
        Assert.Contains("Line 2 has already told", faults[0].What, StringComparison.Ordinal);
        Assert.EndsWith("and otherwise.", faults[1].What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_band_of_light_that_ends_before_it_begins_is_told() => Assert.Equal(
        "c.csv: line 3, column 3 (value)",
        Assert.Single(Faults($"{Header}\nA,sensitiveFromNm,430,datasheet,s,\nA,sensitiveToNm,340,datasheet,s,")).Where);

    [Fact]
    public void Lines_are_counted_through_quoted_line_ends() =>
        Assert.Equal("c.csv: line 4, column 3 (value)", Assert.Single(Faults($"{Header}\nA,solidsPercent,36,datasheet,\"two\nlines\",\nA,solidsPercent,1,datasheet,s,"), fault => fault.Where.Contains("(value)", StringComparison.Ordinal)).Where);

    [Theory]
    [InlineData("")]
    [InlineData("\uFEFF\r\n\r\n")]
    [InlineData(Header)]
    [InlineData("PK\u0003\u0004")]
    [InlineData("{\"emulsions\": []}")]
    public void What_is_no_catalogue_is_told_so(string text) => Assert.NotEmpty(Faults(text));

    [Fact]
    public void The_template_reads_as_a_catalogue_in_which_nobody_has_told_anything() =>
        Assert.Equal("No value is filled in.", Assert.Single(Faults(CatalogueTemplate.Text)).What);

    [Fact]
    public void The_template_has_every_property_and_filled_in_it_is_read()
    {
        var lines = CatalogueTemplate.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var filled = lines.Skip(1).Select(line =>
        {
            var property = line.Split(',')[1];
            var words = line[(line.LastIndexOf(",\"", StringComparison.Ordinal) + 2)..].TrimEnd('"');
            var value = words.StartsWith("a number", StringComparison.Ordinal) ? property.EndsWith("ToNm", StringComparison.Ordinal) ? "401" : property.EndsWith("FromNm", StringComparison.Ordinal) ? "400" : Least(words) : words.Split(" | ")[0];
            return $"A,{property},{value},datasheet,s,";
        });

        var sheet = Assert.Single(CatalogueReader.Read(string.Join('\n', filled.Prepend(Header)), "c.csv").Sheets);

        Assert.Empty(sheet.Questions);
        Assert.Equal(lines.Length - 1, sheet.Lines.Count);

        static string Least(string words) => words[(words.IndexOf(", ", StringComparison.Ordinal) + 2)..].Split(" to ")[0];
    }

    /// <summary>Bits of catalogues in any order: each text is read, or refused with a place and a remedy for every fault.</summary>
    [Fact]
    public void Whatever_is_in_a_file_it_is_read_or_refused_in_words()
    {
        string[] bits = [",", ";", "\"", "\n", "\r\n", "\uFEFF", " ", "A", "solidsPercent", "price at ", "900g", "36%", "1e999", "-", "datasheet", "2025-01-31", "\0", "\ud800", Header];
        Gen.Int[0, bits.Length - 1].Array[0, 40].Select(picks => string.Concat(picks.Select(pick => bits[pick]))).Sample(
            text =>
            {
                foreach (var file in new[] { text, $"{Header}\n{text}" })
                {
                    try
                    {
                        Assert.NotEmpty(CatalogueReader.Read(file, "c.csv").Sheets);
                    }
                    catch (InputProblemException fault)
                    {
                        Assert.All(fault.Problems, problem => Assert.True(problem.What.Length > 0 && problem.Remedy.Length > 0 && problem.Where.StartsWith("c.csv", StringComparison.Ordinal)));
                    }
                }
            },
            iter: 20_000);
    }

    [Fact]
    public void Files_beyond_any_catalogue_are_one_fault_and_told_at_once()
    {
        var lines = string.Concat(Enumerable.Range(0, InputLimits.MostCatalogueLines + 1).Select(i => $"A,nothing,{i},datasheet,s,\n"));
        Assert.Contains("20001 lines", Assert.Single(Faults($"{Header}\n{lines}")).What, StringComparison.Ordinal);
    }

    private static CatalogueEntry Only(string text) => Assert.Single(Assert.Single(CatalogueReader.Read(text, "c.csv").Sheets).Lines).Used;

    private static IReadOnlyList<Problem> Faults(string text) => Assert.Throws<InputProblemException>(() => CatalogueReader.Read(text, "c.csv")).Problems;
}
