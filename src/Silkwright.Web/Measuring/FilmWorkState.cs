namespace Silkwright.Web.Measuring;

/// <summary>Where the measuring of a film is.</summary>
public enum FilmWorkState
{
    Waiting,
    Measuring,

    /// <summary>Asked to stop, and about to.</summary>
    Stopping,
    Measured,
    Stopped,
    Failed,
}
