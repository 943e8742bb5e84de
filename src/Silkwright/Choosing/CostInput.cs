namespace Silkwright.Choosing;

/// <summary>An uncertain amount that the cost of a colour's screens rests on.</summary>
public enum CostInput
{
    GramsPerScreen,
    PricePerKg,
    CoatingMinutes,
    DryingMinutes,
    DryingPlacePerScreen,
    ExposingMinutes,
    MakingMinutes,
    FinishMinutes,
    FinishPerScreen,
    ReclaimMinutes,
    ReclaimPerScreen,
    LabourPerHour,
    WastePercent,
    ExpectedFailures,
    RemakeChance,
    StopForRemake,
    StopForSpare,
    FilmPerScreen,
}
