namespace Silkwright.Plans;

/// <summary>How the width of a spot compares with what is held there.</summary>
public enum SpotJudgement
{
    /// <summary>Narrower by more than a pixel may be out.</summary>
    Finer,

    /// <summary>Within a pixel of it: it may go either way.</summary>
    OnTheEdge,

    /// <summary>As wide or wider.</summary>
    Holds,
}
