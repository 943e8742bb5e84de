using Silkwright.Estimates;

namespace Silkwright.Web.Measuring;

/// <summary>How the measuring of one film stands.</summary>
/// <param name="State">Where it is.</param>
/// <param name="Share">Share done, 0 to 1.</param>
/// <param name="Problems">Why it failed.</param>
public sealed record FilmWork(FilmWorkState State, double Share, IReadOnlyList<Problem> Problems)
{
    public static FilmWork Waiting { get; } = new(FilmWorkState.Waiting, 0, []);

    public bool IsBusy => State is FilmWorkState.Waiting or FilmWorkState.Measuring;

    public string Words => State switch
    {
        FilmWorkState.Waiting => "waiting",
        FilmWorkState.Measuring => $"{Silkwright.Estimates.Figures.Plain(100 * Share, 0)} % measured",
        FilmWorkState.Stopped => "stopped",
        FilmWorkState.Failed => "cannot be measured",
        _ => "measured",
    };
}
