using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Records.Screens;
using Silkwright.Web.Look;

namespace Silkwright.Web.Pages.Screens;

/// <summary>Entries of a screen's record in plain words.</summary>
public static class EntryWords
{
    public static string Kind(ScreenEventKind kind) => kind switch
    {
        ScreenEventKind.Tensioned => "Tension read",
        ScreenEventKind.DryIn => "Into the dryer",
        ScreenEventKind.DryOut => "Out of the dryer",
        ScreenEventKind.Climate => "Air read",
        ScreenEventKind.JobAssigned => "Given to a job",
        ScreenEventKind.Withdrawn => "Taken back",
        _ => kind.ToString(),
    };

    public static string Stage(ScreenStage stage) => stage switch
    {
        ScreenStage.Exposed => "washed out, not checked",
        ScreenStage.Coated => "coated, wet",
        ScreenStage.Dry => "coated and dry",
        ScreenStage.Meshed => "bare mesh",
        _ => stage.ToString().ToLowerInvariant(),
    };

    public static string Check(CheckResult result) => result switch
    {
        CheckResult.TouchedUp => "good after touching up",
        CheckResult.Rejected => "to be made again",
        _ => "good",
    };

    public static string End(EndReason reason) => reason switch
    {
        EndReason.Broke => "broke down",
        EndReason.Reclaimed => "taken off sound and reclaimed",
        _ => "put away sound",
    };

    /// <summary>What an entry says beyond its kind.</summary>
    public static string Of(ScreenFact fact, UnitSystem read) => fact switch
    {
        MeshTensioned f => Join($"{Number(f.TensionNPerCm)} N/cm", f.MeshLot is null ? null : $"mesh lot {f.MeshLot}"),
        ScreenCoated f => Join(f.EmulsionId, f.Lot is null ? null : $"lot {f.Lot}", f.Strokes is null ? null : Said.Of(f.Strokes), f.TroughId is null ? null : $"{f.TroughId} edge"),
        DryingBegun f => f.Place ?? "",
        ClimateRead f => Join($"{Number(f.HumidityPercent)} % humidity", f.Celsius is { } c ? Units.Temperature(c, read) : null, f.Place),
        ScreenExposed f => Join($"{Number(f.Amount)} {Said.Unit(f.Counts)}", f.SolidStep is { } s ? $"solid step {s}" : null, f.LampId),
        ScreenChecked f => Join(Check(f.Result), f.SolidStep is { } s ? $"solid step {s}" : null, f.EomUm is { } um ? $"{Units.Length(um, read)} over mesh" : null),
        JobAssigned f => Join(f.JobId, f.Colour),
        ScreenPrinted f => Join($"{Figures.Whole(f.Impressions)} impressions", f.JobId),
        ScreenEnded f => Join(End(f.Reason), f.How),
        _ => "",
    };

    private static string Join(params string?[] parts) => string.Join(", ", parts.Where(p => !string.IsNullOrEmpty(p)));

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
