using CsCheck;
using Silkwright.Catalogue;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>What is kept is what was checked: written and read back, a catalogue says the same.</summary>
public sealed class CatalogueWriterTests
{
    private static readonly Ground[] Grounds = [Ground.MeasuredHere, Ground.MeasuredElsewhere, Ground.Datasheet, Ground.CommonPractice];

    private static readonly Gen<CatalogueEntry> AnyEntry =
        from emulsion in Among("Wagtail", "Dip\"per, 2", "Ouzel; blue")
        from property in Among([.. CatalogueProperties.All.Where(p => p != CatalogueProperties.SensitiveFrom && p != CatalogueProperties.SensitiveTo)])
        from at in Gen.Double[property.AtUnit.Length == 0 ? 0 : property.LeastAt, property.AtUnit.Length == 0 ? 0 : property.MostAt]
        from number in Gen.Double[property.Words is null ? property.Least : 0, property.Words is null ? property.Most : 0]
        from word in Gen.Int[0, (property.Words?.Count ?? 1) - 1]
        from ground in Among(Grounds)
        from source in Among("sheet", "sheet, \"second\" edition; p. 2", "µ-test")
        from day in Gen.Int[0, 9000]
        select new CatalogueEntry(
            emulsion, property, property.AtUnit.Length == 0 ? null : Known(property, at),
            property.Words is { } words ? CatalogueValue.Of(words[word]) : CatalogueValue.Of(number),
            ground, source, day == 0 ? null : new DateOnly(2001, 1, 1).AddDays(day));

    [Fact]
    public void Whatever_a_catalogue_says_is_read_back_to_the_last_digit() => AnyEntry.List[1, 40].Sample(
        entries =>
        {
            var once = entries.DistinctBy(entry => (entry.Emulsion, entry.Property, entry.At, entry.Ground, entry.Source, entry.Date));
            var catalogue = new EmulsionCatalogue(once);
            var text = CatalogueWriter.Write(catalogue);
            var back = CatalogueReader.Read(text, "c.csv");
            Assert.True(CatalogueDifference.Between(catalogue, back).IsNone, text);
            Assert.Equal(text, CatalogueWriter.Write(back));
        },
        iter: 2_000);

    [Fact]
    public void The_columns_are_the_readers_and_a_separator_within_is_quoted_as_RFC_4180_has_it()
    {
        var catalogue = CatalogueReader.Read("emulsion;property;value;ground;source;date\nA;price at 2lb;\"23\";datasheet;\"list; \"\"spring\"\"\";\n", "c.csv");
        // 2 lb = 907.18474 g by definition.
        Assert.Equal("emulsion,property,value,ground,source,date\nA,price at 907.18474g,23,datasheet,\"list; \"\"spring\"\"\",\n", CatalogueWriter.Write(catalogue));
    }

    private static Gen<T> Among<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    /// <summary>Near the usual circumstance the reader takes the usual one.</summary>
    private static double Known(CatalogueProperty property, double at) => property.UsualAt is { } usual && Math.Abs(at - usual) < 0.5 ? usual : at;
}
