namespace Silkwright.Life;

/// <summary>What a spare, a remake and a stopped press cost.</summary>
/// <param name="SparePerScreen">Making one spare screen.</param>
/// <param name="RemakePerScreen">Making a screen again in a hurry.</param>
/// <param name="StopPerMinute">A stopped press. [cost/min]</param>
/// <param name="RemakeMinutes">Stop until a remade screen is on press. [min]</param>
/// <param name="SpareMinutes">Stop until a spare is on press. [min]</param>
public sealed record SpareCosts(
    double SparePerScreen, double RemakePerScreen, double StopPerMinute, double RemakeMinutes, double SpareMinutes);
