namespace Silkwright.Web.Measuring;

/// <summary>Where the measuring of a film is.</summary>
public enum FilmWorkState
{
    Waiting,
    Measuring,
    Measured,
    Stopped,
    Failed,
}
