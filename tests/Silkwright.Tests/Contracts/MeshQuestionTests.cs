using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

public sealed class MeshQuestionTests
{
    private static GivenTexts Given(string count, string thread) => new(new Dictionary<string, string> { ["count"] = count, ["thread"] = thread });

    [Fact]
    public void A_mesh_named_in_inches_is_kept_in_metric()
    {
        var fabric = MeshQuestion.Answer(Given("254/in", "2mil")).Fabric;
        Assert.Equal(100, fabric.CountPerCm, 9);
        Assert.Equal(50.8, fabric.ThreadUm, 9);
    }

    /// <summary>100 threads of 100 µm fill a centimetre: geometry.</summary>
    [Fact]
    public void Threads_that_would_overlap_are_a_fault() =>
        Assert.Contains("overlap", Assert.Throws<InputProblemException>(() => MeshQuestion.Answer(Given("100/cm", "100um"))).Problems[0].What, StringComparison.Ordinal);

    [Fact]
    public void A_negative_count_is_a_fault() =>
        Assert.Equal("count", Assert.Throws<InputProblemException>(() => MeshQuestion.Answer(Given("-61/cm", "64um"))).Problems.Single().Where);

    [Fact]
    public void A_fabric_thinner_than_its_thread_is_a_fault()
    {
        var given = new GivenTexts(new Dictionary<string, string> { ["count"] = "61/cm", ["thread"] = "64um", ["fabric-thickness"] = "50um" });

        Assert.Contains("thinner", Assert.Throws<InputProblemException>(() => MeshQuestion.Answer(given)).Problems.Single().What, StringComparison.Ordinal);
    }
}
