using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Tests.Contracts;

/// <summary>The same figure is taken or refused at every door.</summary>
public class InputLimitsTests
{
    [Theory]
    [InlineData(4.9, 64, false)]
    [InlineData(5, 64, true)]
    [InlineData(225, 24, true)]
    [InlineData(250, 24, true)]
    [InlineData(251, 24, false)]
    [InlineData(61, 5e-324, false)]
    [InlineData(61, 14.9, false)]
    [InlineData(5, 500, true)]
    [InlineData(5, 501, false)]
    public void A_mesh_of_a_question_and_of_a_shop(double countPerCm, double threadUm, bool taken)
    {
        var (count, thread) = (countPerCm.ToString("R", CultureInfo.InvariantCulture), threadUm.ToString("R", CultureInfo.InvariantCulture));
        var given = new GivenTexts(new Dictionary<string, string> { ["count"] = $"{count}/cm", ["thread"] = $"{thread}um" });
        Assert.Equal(taken, Record.Exception(() => MeshQuestion.Answer(given)) is null);
        Assert.Equal(taken, Record.Exception(() => ShopReader.Read($$"""{"meshes": [{"countPerCm": {{count}}, "threadUm": {{thread}}}]}""", "shop.json")) is null);
    }

    /// <summary>What the reader takes, the engines must be able to reckon with: every figure of a shop at its least, then at its most.</summary>
    [Theory]
    [InlineData(
        "diazo", "5", "15", "10", "0.01", "5", "0.01", "0.01", "0.2", "200", "-500", "0", "0", "0.01", "0")]
    [InlineData(
        "diazo", "5", "500", "100", "5", "9000", "100000", "86400", "3", "10000", "6000", "100", "45", "86400", "41")]
    [InlineData(
        "capillaryFilm", "5", "500", "100", "5", "9000", "100000", "86400", "3", "10000", "6000", "100", "45", "86400", "41")]
    [InlineData(
        "photopolymer", "250", "15", "100", "0.01", "5", "100000", "0.01", "3", "200", "6000", "0", "0", "0.01", "41")]
    public void A_shop_at_its_limits_is_one_that_can_be_planned(
        string family, string count, string thread, string solids, string relative, string depth, string dose, string amount,
        string edge, string distance, string altitude, string humidity, string celsius, string seconds, string step)
    {
        var mesh = $$"""{"countPerCm": {{count}}, "threadUm": {{thread}}}""";
        var shop = ShopReader.Read(
            $$$"""
            {"meshes": [{{{mesh}}}], "troughs": [{"id": "t", "edgeRadiusMm": {{{edge}}}}],
             "emulsions": [{"id": "e", "family": "{{{family}}}", "resists": ["uv"], "solidsPercent": {{{solids}}}, "relativeExposure": {{{relative}}},
               "penetrationDepthUm": {{{depth}}}, "criticalDoseMjPerCm2": {{{dose}}}, "filmThicknessUm": 700}],
             "lamps": [{"id": "l", "kind": "metalHalide", "distanceMm": {{{distance}}}, "hours": 200000}],
             "room": {"celsius": {{{celsius}}}, "humidityPercent": {{{humidity}}}, "altitudeM": {{{altitude}}}},
             "readings": {"exposure": [{"emulsion": "e", "seconds": {{{amount}}}, "solidStep": {{{step}}}}, {"emulsion": "e", "seconds": {{{seconds}}}, "damp": true}],
               "coat": [{"emulsion": "e", "mesh": {{{mesh}}}, "strokes": "P S", "eomUm": 0}, {"emulsion": "e", "mesh": {{{mesh}}}, "strokes": "P S", "eomUm": 1000}]}}
            """,
            "shop.json");
        foreach (var needs in new[] { new TypedNeeds(5, 5, 200, 0.01, 0.1), new TypedNeeds(50_000, 50_000, 10, 100, 100_000) })
        {
            var job = new Job { Name = "x", Date = new DateOnly(2026, 11, 25), Run = InputLimits.MostImpressions, Colours = [new JobColour { Name = "x", Ink = InkKind.Uv, Needs = needs, ImpressionsPerGarment = 12 }] };
            var plan = PlanDocument.Of(Planner.Plan(job, shop)).ToJsonString();
            Assert.DoesNotContain("NaN", plan, StringComparison.Ordinal);
            Assert.Contains("\"colours\"", plan, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("5e-324um", "40%")]
    [InlineData("1e-9um", "40%")]
    [InlineData("60um", "1e-300%")]
    public void A_layer_too_thin_to_be_one_is_refused(string wet, string solids) => Assert.Throws<InputProblemException>(
        () => DryingQuestion.Answer(new GivenTexts(new Dictionary<string, string>
        {
            ["temperature"] = "25C", ["humidity"] = "40%", ["wet-thickness"] = wet, ["solids"] = solids,
        })));

    [Theory]
    [InlineData("60s", "1e-320")]
    [InlineData("60s", "0.001")]
    [InlineData("1e-300s", "0.15")]
    public void A_step_or_an_exposure_too_small_to_tell_is_refused(string seconds, string density) => Assert.Throws<InputProblemException>(
        () => StepQuestion.Answer(new GivenTexts(new Dictionary<string, string>
        {
            ["seconds"] = seconds, ["observed"] = "5", ["target"] = "7", ["density-per-step"] = density,
        })));
}
