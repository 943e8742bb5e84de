using System.Collections.ObjectModel;
using Silkwright.Estimates;

namespace Silkwright.Scheduling.Shelf;

/// <summary>A job of the month, or a kind of jobs that are alike.</summary>
/// <param name="Id">Its name, once in a case.</param>
/// <param name="ScreensPerMonth">Screens made for it. [screens/month], 0 or more.</param>
/// <param name="Costs">What a screen costs with each emulsion that can serve it, by the emulsion's id. [money/screen], 0 or more.</param>
/// <remarks>A cost here is the one figure that the choice is made by; how far it may lie off is beside it.</remarks>
public sealed record ShelfJob(string Id, double ScreensPerMonth, IReadOnlyDictionary<string, double> Costs)
{
    /// <summary>The emulsion it must be made with; none where it may move.</summary>
    public string? MustStayOn { get; init; }

    /// <summary>Emulsion on a screen of it, by the emulsion's id; one not named: <see cref="ShelfEmulsion.GramsPerScreen"/>. [g/screen], 0 or more.</summary>
    public IReadOnlyDictionary<string, double> GramsPerScreen { get; init; } = ReadOnlyDictionary<string, double>.Empty;

    /// <summary>Costs that are given with an interval, by the emulsion's id; the value is the one in <see cref="Costs"/>. [money/screen]</summary>
    public IReadOnlyDictionary<string, Estimate> CostRanges { get; init; } = ReadOnlyDictionary<string, Estimate>.Empty;

    /// <summary>What a screen costs with an emulsion bought in a size; none where that emulsion can't make it. [money/screen]</summary>
    public double? CostWith(ShelfEmulsion emulsion, ShelfContainer? container)
    {
        if (!Costs.TryGetValue(emulsion.Id, out var cost))
            return null;
        return container is null ? cost : cost + (GramsOf(emulsion) * container.PricePerGram);
    }

    /// <summary>Emulsion on a screen of it. [g/screen]</summary>
    public double GramsOf(ShelfEmulsion emulsion) => GramsPerScreen.GetValueOrDefault(emulsion.Id, emulsion.GramsPerScreen);
}
