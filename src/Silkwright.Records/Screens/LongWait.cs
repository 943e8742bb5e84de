using Silkwright.Estimates;

namespace Silkwright.Records.Screens;

/// <summary>A screen lay longer between two steps than is good for it.</summary>
/// <param name="After">The step it waited after.</param>
/// <param name="Before">The step it waited for.</param>
/// <param name="Minutes">How long it waited, or has waited so far. [min]</param>
/// <param name="LimitMinutes">How long is usual at most. [min]</param>
/// <param name="Ground">Who says so.</param>
/// <param name="Over">It waits no more.</param>
public sealed record LongWait(
    ScreenEventKind After, ScreenEventKind Before, double Minutes, double LimitMinutes, Ground Ground, bool Over);
