using Silkwright.Estimates;

namespace Silkwright.Web.Measuring;

/// <summary>How the measuring of one film stands.</summary>
/// <param name="State">Where it is.</param>
/// <param name="Share">Share done, 0 to 1.</param>
/// <param name="Problems">Why it failed.</param>
/// <param name="Left">How long it may still take, told from how long the share done took; none while that is too little to tell from.</param>
public sealed record FilmWork(FilmWorkState State, double Share, IReadOnlyList<Problem> Problems, TimeSpan? Left = null)
{
    /// <summary>Less done tells nothing of how long the rest takes.</summary>
    private const double LeastToldShare = 0.05;

    /// <summary>Its turn among those that wait, from 1; 0 once it has begun.</summary>
    internal long Turn { get; init; }

    /// <summary>Films whose turn comes before, the one on the bench among them.</summary>
    public int Ahead { get; init; }

    internal static FilmWork Waiting(long turn) => new(FilmWorkState.Waiting, 0, []) { Turn = turn };

    /// <summary>Being measured: a share done in some time.</summary>
    public static FilmWork Measuring(double share, TimeSpan taken) =>
        new(FilmWorkState.Measuring, share, [], share >= LeastToldShare ? taken * ((1 - share) / share) : null);

    public bool IsBusy => State is FilmWorkState.Waiting or FilmWorkState.Measuring or FilmWorkState.Stopping;

    /// <summary>It can still be stopped.</summary>
    public bool CanStop => State is FilmWorkState.Waiting or FilmWorkState.Measuring;

    public string Words => State switch
    {
        FilmWorkState.Waiting => Ahead switch
        {
            0 => "waiting",
            1 => "waiting for the film before it",
            _ => $"waiting for {Figures.Whole(Ahead)} films before it",
        },
        FilmWorkState.Measuring => $"{Figures.Whole(Math.Floor(100 * Share))} % measured{LeftWords}",
        FilmWorkState.Stopping => "stopping",
        FilmWorkState.Stopped => "stopped",
        FilmWorkState.Failed => "cannot be measured",
        _ => "measured",
    };

    private string LeftWords => Left switch
    {
        null or { TotalSeconds: < 1 } => "",
        { TotalSeconds: < 90 } left => $", about {Figures.Plain(Math.Ceiling(left.TotalSeconds), 0)} s left",
        { } left => $", about {Figures.Plain(Math.Ceiling(left.TotalMinutes), 0)} min left",
    };
}
