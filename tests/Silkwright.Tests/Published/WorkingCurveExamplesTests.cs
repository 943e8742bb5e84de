using Silkwright.Exposure;

namespace Silkwright.Tests.Published;

/// <summary>Worked example of a public page on the cure depth of resins: Dp 0.175 mm, Ec 8 and E 30 mJ/cm², printed 0.231 mm.</summary>
public class WorkingCurveExamplesTests
{
    [Fact]
    public void Depth_of_the_worked_example() =>
        Assert.Equal(0.2313, new WorkingCurve(175, 8).DepthUm(30) / 1000, 5e-4);
}
