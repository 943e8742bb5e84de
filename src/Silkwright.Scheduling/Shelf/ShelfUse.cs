namespace Silkwright.Scheduling.Shelf;

/// <summary>What a kept emulsion is used for; with scenarios the weighted mean of the months.</summary>
/// <param name="Emulsion">Its id.</param>
/// <param name="Jobs">Jobs made with it in the likeliest month.</param>
/// <param name="ScreensPerMonth">[screens/month]</param>
/// <param name="FixedCostPerMonth">[money/month]</param>
/// <param name="RunningCostPerMonth">What its screens cost. [money/month]</param>
public sealed record ShelfUse(string Emulsion, int Jobs, double ScreensPerMonth, double FixedCostPerMonth, double RunningCostPerMonth)
{
    /// <summary>The size it is bought in; none where the case gives no sizes.</summary>
    public ShelfSize? Size { get; init; }
}
