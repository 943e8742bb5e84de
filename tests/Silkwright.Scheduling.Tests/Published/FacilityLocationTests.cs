using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Published;

/// <summary>Beasley, OR-Library: distributing test problems by electronic mail, J. Opl. Res. Soc. 41 (1990); instance and its proven optimum.</summary>
public sealed class FacilityLocationTests
{
    [Theory]
    [InlineData("cap71.txt", 932615.750)]
    public void The_published_optimum_is_reached_and_proven(string file, double optimum)
    {
        var answer = ShelfChoice.Of(FacilityLocationFile.Read(file), TimeProvider.System, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(optimum, answer.MonthlyCost, optimum * 1e-6);
        Assert.Equal(optimum, answer.Bound, optimum * 1e-6);
        Assert.InRange(answer.GapPercent, 0, 1e-6);
    }
}
