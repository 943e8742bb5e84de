using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Estimates;

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
    [InlineData(5, 1000, true)]
    [InlineData(5, 1001, false)]
    public void A_mesh_of_a_question_and_of_a_shop(double countPerCm, double threadUm, bool taken)
    {
        var (count, thread) = (countPerCm.ToString("R", CultureInfo.InvariantCulture), threadUm.ToString("R", CultureInfo.InvariantCulture));
        var given = new GivenTexts(new Dictionary<string, string> { ["count"] = $"{count}/cm", ["thread"] = $"{thread}um" });
        Assert.Equal(taken, Record.Exception(() => MeshQuestion.Answer(given)) is null);
        Assert.Equal(taken, Record.Exception(() => ShopReader.Read($$"""{"meshes": [{"countPerCm": {{count}}, "threadUm": {{thread}}}]}""", "shop.json")) is null);
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
