using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Light;
using Silkwright.Mesh;

namespace Silkwright.Tests.Light;

/// <summary>What is assumed, and that the intervals hold it.</summary>
public class EdgeAnswerTests
{
    private static readonly EdgeParts Bare = new() { Mesh = new MeshFabric(120, 34, Dyed: true), Photons = 80_000 };

    private static readonly EdgeParts Known = Bare with
    {
        Family = EmulsionFamily.DualCure,
        CoatAbsorptionPerCm = 118,
        CoatScatteringPerCm = 300,
        CoatAnisotropy = 0.85,
        GapUm = 10,
        SqueegeeSideUm = 3,
        PrintSideUm = 8,
        Lamp = LampLight.Point(1000, 100),
    };

    [Fact]
    public void A_value_assumed_may_lie_at_either_end_and_the_answer_is_still_in_its_interval()
    {
        var asked = Bare.Asked();
        var answer = EdgeAnswer.Of(asked, cancel: TestContext.Current.CancellationToken);
        foreach (var assumed in asked.Assumed)
        {
            foreach (var end in new[] { assumed.Input.Estimate.Low, assumed.Input.Estimate.High })
            {
                var there = StencilTransport.Of(assumed.With(asked.Case, end), cancel: TestContext.Current.CancellationToken).Through.Average;
                Assert.InRange(there.Value, answer.ThroughAverage.Low - (4 * there.StandardError), answer.ThroughAverage.High + (4 * there.StandardError));
            }
        }
    }

    [Fact]
    public void What_is_known_of_a_coat_narrows_the_answer()
    {
        var (bare, known) = (EdgeAnswer.Of(Bare.Asked(), cancel: TestContext.Current.CancellationToken), EdgeAnswer.Of(Known.Asked(), cancel: TestContext.Current.CancellationToken));
        Assert.True(Width(known.ThroughAverage) < Width(bare.ThroughAverage));
        Assert.DoesNotContain(known.Asked.Assumed, assumed => assumed.Input.Name.Contains("coat", StringComparison.Ordinal));
        Assert.True(known.Asked.Notes.Count < bare.Asked.Notes.Count);

        static double Width(Estimate estimate) => (estimate.High - estimate.Low) / estimate.Value;
    }

    [Fact]
    public void The_answer_is_the_same_whatever_the_threads_and_tells_how_far_it_is()
    {
        var told = new List<double>();
        var one = EdgeAnswer.Of(Known.Asked(), 1, new Straight(told.Add), TestContext.Current.CancellationToken);
        Assert.Equal(one.ThroughWorst, EdgeAnswer.Of(Known.Asked(), 3, cancel: TestContext.Current.CancellationToken).ThroughWorst);
        Assert.Equal(1, told[^1], 1e-9);
        Assert.Equal(told.Order(), told);
    }

    private sealed class Straight(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
