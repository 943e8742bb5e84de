using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Tests.Contracts;

public sealed class CoatExperienceQuestionTests
{
    private const string Header = "shop,operator,trough,emulsion,solidsPercent,meshCountPerCm,threadUm,printPasses,squeegeePasses,eomUm,screen,point,measuredOn\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Every text and every number of the file is held against every name, date, thickness and count of the readings it was made of.</summary>
    [Fact]
    public void Nothing_of_a_reading_is_in_the_file()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var random = new Random(seed);
            var (text, names, numbers) = Drawn(random);
            var document = CoatExperienceDocument.Of(CoatExperienceQuestion.Answer(CoatTable.Readings(text, "r.csv"), [], [], Cancel).Experience);
            var (texts, values) = (new List<string>(), new List<double>());
            Gather(document, texts, values);
            foreach (var name in names)
                Assert.DoesNotContain(texts, written => written.Contains(name, StringComparison.OrdinalIgnoreCase));
            foreach (var number in numbers)
                Assert.DoesNotContain(values, value => Math.Abs(value - number) < 1e-9);
        }
    }

    [Fact]
    public void A_file_read_again_teaches_the_same()
    {
        var made = CoatExperienceQuestion.Answer(CoatTable.Readings(Drawn(new Random(1)).Text, "r.csv"), [], [], Cancel).Experience;
        var read = CoatExperienceReader.Read(CoatExperienceDocument.Of(made).ToJsonString(), "e.json");
        Assert.Equal(made.Effects, read.Effects);
        Assert.Equal(made.Precision, read.Precision);
        Assert.Equal(made.Pull, read.Pull);
        Assert.Equal((made.Squares, made.Readings, made.Shops), (read.Squares, read.Readings, read.Shops));
        Assert.Equal(made.Spreads.OrderBy(s => s.Key), read.Spreads.OrderBy(s => s.Key));
        Assert.Equal(made.Parts, read.Parts);
    }

    [Theory]
    [InlineData("readigns", "100", "readings")]
    [InlineData("sqares", "1", "squares")]
    [InlineData("shop", "\"Harbour\"", "shops")]
    public void A_field_written_wrong_is_told_with_the_one_that_was_meant(string field, string value, string meant)
    {
        var document = Document();
        document[field] = JsonNode.Parse(value);
        var problem = Assert.Single(Assert.Throws<InputProblemException>(() => CoatExperienceReader.Read(document.ToJsonString(), "e.json")).Problems);
        Assert.Contains(field, problem.What, StringComparison.Ordinal);
        Assert.Contains(meant, problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void What_no_readings_can_have_taught_is_refused()
    {
        Assert.All(
            new Action<JsonObject>[]
            {
                file => file["squares"] = 0,
                file => file["squares"] = 1e14,
                file => file["shops"] = 5000,
                file => file["spreads"]![0]!["pull"] = 1e12,
                file => file["spreads"]![0]!["pull"] = -1e12,
                file => file["effects"]![0]!["precision"]![0] = -5,
                file => file["effects"]![0]!["precision"]!.AsArray().Add(1),
                file => file["effects"]![0]!["name"] = "film of nobody",
                file => file["effects"]![0]!["pull"] = 1e300,
                file => file["effects"]!.AsArray().Add(file["effects"]!.AsArray()[^1]!.DeepClone()),
                file => file["spreads"]![0]!["group"] = "moon",
                file => file["spreads"]!.AsArray().Add(file["spreads"]![0]!.DeepClone()),
                file => file["readings"] = 1.5,
                file => file["parts"] = new JsonArray(),
                file => file["parts"] = new JsonArray("a", "a"),
                file => file["schema"] = "silkwright/coat-predict/1",
                file => file.Remove("squares"),
            },
            spoil =>
            {
                var file = Document();
                spoil(file);
                _ = Assert.Throws<InputProblemException>(() => CoatExperienceReader.Read(file.ToJsonString(), "e.json"));
            });
    }

    [Fact]
    public void A_shop_that_shares_nothing_gives_nothing_and_may_use_what_others_give()
    {
        var readings = CoatTable.Readings(Drawn(new Random(2)).Text, "r.csv");
        var others = CoatExperienceReader.Read(Document().ToJsonString(), "e.json");
        string[] shops = [.. readings.Select(row => row.Coat.Shop).Distinct()];
        Assert.Contains("shares nothing", Refused(() => CoatExperienceQuestion.Answer(readings, shops, [], Cancel)), StringComparison.Ordinal);
        Assert.Contains("shares nothing", Refused(() => CoatExperienceQuestion.Of(new Shop { SharesExperience = false }, [], Cancel)), StringComparison.Ordinal);
        var (alone, helped) = (CoatQuestion.Answer(readings, [readings[0]], shops, null, Cancel), CoatQuestion.Answer(readings, [readings[0]], shops, others, Cancel));
        Assert.True(helped.Cases[0].MeanUm.High - helped.Cases[0].MeanUm.Low < alone.Cases[0].MeanUm.High - alone.Cases[0].MeanUm.Low);
    }

    /// <summary>A slip in a shop's name would share what it keeps to itself.</summary>
    [Fact]
    public void A_shop_left_out_must_be_one_of_the_readings()
    {
        var readings = CoatTable.Readings(Drawn(new Random(2)).Text, "r.csv");
        var fault = Assert.Throws<InputProblemException>(() => CoatExperienceQuestion.Answer(readings, ["Qvarnshop-"], [], Cancel));
        Assert.Contains("Qvarnshop", Assert.Single(fault.Problems).Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_few_readings_and_the_same_file_twice_are_refused_with_what_to_do()
    {
        var readings = CoatTable.Readings(Drawn(new Random(2)).Text, "r.csv");
        Assert.Contains("lie open", Refused(() => CoatExperienceQuestion.Answer([.. readings.Take(6)], [], [], Cancel)), StringComparison.Ordinal);
        var one = CoatExperienceQuestion.Answer(readings, [], [], Cancel).Experience;
        Assert.Contains("b.json", Refused(() => CoatExperienceQuestion.Together([("a.json", one), ("b.json", one)])), StringComparison.Ordinal);
        Assert.Contains("nothing to make", Refused(() => CoatExperienceQuestion.Answer(null, [], [], Cancel)), StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_are_known_again_in_another_order_by_other_names_and_among_more()
    {
        var text = Drawn(new Random(2)).Text;
        var readings = CoatTable.Readings(text, "r.csv");
        var whole = CoatExperienceQuestion.Answer(readings, [], [], Cancel).Experience;
        var some = CoatExperienceQuestion.Answer(readings, ["Qvarnshop0"], [], Cancel).Experience;
        CoatRow[] turned = [.. readings.Reverse()];
        var renamed = CoatTable.Readings(text.Replace("Qvarnshop", "Bakery", StringComparison.Ordinal).Replace("Ylva", "Nils", StringComparison.Ordinal), "r.csv");
        foreach (var (made, given) in new[] { (whole, turned), (whole, renamed), (some, readings), (whole, readings) })
        {
            Assert.Contains("e.json", Refused(() => CoatExperienceQuestion.Answer(given, [], [("e.json", made)], Cancel)), StringComparison.Ordinal);
            Assert.Contains("these readings", Refused(() => CoatQuestion.Answer(given, [given[0]], null, made, Cancel)), StringComparison.Ordinal);
            Assert.Contains("these readings", Refused(() => CoatNextQuestion.Answer(given, [given[0]], elsewhere: made, cancel: Cancel)), StringComparison.Ordinal);
        }

        CoatRow[] left = [.. readings.Where(row => row.Coat.Shop == "Qvarnshop0")];
        Assert.NotNull(CoatNextQuestion.Answer(left, [left[0]], elsewhere: some, cancel: Cancel).Worths);
    }

    /// <summary>Whoever knows what may be read could try all of it against the mark of a few readings.</summary>
    [Fact]
    public void A_shop_with_few_readings_has_no_mark_of_its_own()
    {
        var readings = CoatTable.Readings(Drawn(new Random(2)).Text, "r.csv");
        string[] shops = [.. readings.Select(row => row.Coat.Shop).Distinct()];
        CoatRow[] few = [.. readings.Where(row => row.Coat.Shop == shops[0]), .. readings.Where(row => row.Coat.Shop == shops[1]).Take(9)];
        _ = Assert.Single(CoatExperienceQuestion.Answer(few, [], [], Cancel).Experience.Parts);
    }

    private static string Refused(Func<object?> asked) => Assert.Single(Assert.Throws<InputProblemException>(asked).Problems).What;

    private static JsonObject Document() => CoatExperienceDocument.Of(CoatExperienceQuestion.Answer(CoatTable.Readings(Drawn(new Random(1)).Text, "r.csv"), [], [], Cancel).Experience);

    /// <summary>Shops of invented names, with what must not be found again.</summary>
    private static (string Text, IReadOnlyList<string> Names, IReadOnlyList<double> Numbers) Drawn(Random random)
    {
        var (text, names, numbers) = (new System.Text.StringBuilder(Header), new List<string> { "2026-" }, new List<double>());
        for (var shop = 0; shop < 3 + random.Next(3); shop++)
        {
            var ours = $"Qvarnshop{shop}";
            names.Add(ours);
            for (var person = 0; person < 2; person++)
            {
                var count = 7 + random.Next(6);
                numbers.Add(count);
                names.Add($"Ylva{shop}x{person}");
                names.Add($"Trog{shop}x{person}");
                for (var i = 0; i < count; i++)
                {
                    var um = Math.Round(8 + (8 * random.NextDouble()), 2);
                    numbers.Add(um);
                    names.Add($"Skrm{shop}x{i}");
                    text.AppendLine(CultureInfo.InvariantCulture, $"{ours},Ylva{shop}x{person},Trog{shop}x{person},kind {random.Next(4)},38,61,64,{1 + random.Next(2)},1,{um},Skrm{shop}x{i},{1 + random.Next(9)},2026-11-{10 + random.Next(15)}");
                }
            }
        }

        return (text.ToString(), names, numbers);
    }

    private static void Gather(JsonNode? node, List<string> texts, List<double> values)
    {
        foreach (var child in node switch { JsonObject fields => fields.Where(field => field.Key != "shops").Select(field => field.Value), JsonArray list => list, _ => [] })
            Gather(child, texts, values);
        if (node is JsonValue value && value.TryGetValue<string>(out var text))
            texts.Add(text);
        else if (node is JsonValue number && number.TryGetValue<double>(out var read))
            values.Add(read);
    }
}
