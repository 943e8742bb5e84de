using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>The amounts of a case one by one.</summary>
internal static class CostInputs
{
    /// <summary>Every input, in its own order.</summary>
    public static readonly IReadOnlyList<CostInput> All = Enum.GetValues<CostInput>();

    /// <summary>A shop has one of these whatever the emulsion: choices compared share its luck.</summary>
    public static bool IsShared(CostInput input) => input is
        CostInput.DryingPlacePerScreen or CostInput.MakingMinutes or CostInput.LabourPerHour or CostInput.StopForRemake or CostInput.StopForSpare;

    public static string Words(CostInput input) => input switch
    {
        CostInput.GramsPerScreen => "emulsion on the screen",
        CostInput.PricePerKg => "price of the emulsion",
        CostInput.CoatingMinutes => "minutes of coating",
        CostInput.DryingMinutes => "minutes spent on drying",
        CostInput.DryingPlacePerScreen => "cost of the place to dry",
        CostInput.ExposingMinutes => "minutes of exposing",
        CostInput.MakingMinutes => "minutes of washing out and checking",
        CostInput.FinishMinutes => "minutes of finishing",
        CostInput.FinishPerScreen => "material of the finish",
        CostInput.ReclaimMinutes => "minutes of reclaiming",
        CostInput.ReclaimPerScreen => "mesh lost",
        CostInput.LabourPerHour => "labour rate",
        CostInput.WastePercent => "share thrown away",
        CostInput.ExpectedFailures => "stencil life",
        CostInput.RemakeChance => "remakes before printing",
        CostInput.StopForRemake => "stopped press",
        CostInput.StopForSpare => "putting on a spare",
        CostInput.FilmPerScreen => "film on the screen",
        _ => throw new ArgumentOutOfRangeException(nameof(input)),
    };

    public static Estimate Of(CostCase cost, CostInput input) => input switch
    {
        CostInput.GramsPerScreen => cost.GramsPerScreen,
        CostInput.PricePerKg => cost.PricePerKg,
        CostInput.CoatingMinutes => cost.Work.Coating,
        CostInput.DryingMinutes => cost.Work.Drying,
        CostInput.DryingPlacePerScreen => cost.DryingPlacePerScreen,
        CostInput.ExposingMinutes => cost.Work.Exposing,
        CostInput.MakingMinutes => cost.Work.Making,
        CostInput.FinishMinutes => cost.Work.Finish,
        CostInput.FinishPerScreen => cost.FinishPerScreen,
        CostInput.ReclaimMinutes => cost.Work.Reclaim,
        CostInput.ReclaimPerScreen => cost.ReclaimPerScreen,
        CostInput.LabourPerHour => cost.LabourPerHour,
        CostInput.WastePercent => cost.WastePercent,
        CostInput.ExpectedFailures => TriangularLaw.AroundMean(cost.ExpectedFailures),
        CostInput.RemakeChance => cost.RemakeChance,
        CostInput.StopForRemake => cost.StopForRemake,
        CostInput.StopForSpare => cost.StopForSpare,
        CostInput.FilmPerScreen => cost.FilmPerScreen,
        _ => throw new ArgumentOutOfRangeException(nameof(input)),
    };
}
