namespace Silkwright.Scheduling.Shelf;

/// <summary>A shelf found, and what no shelf under the same rules can undercut.</summary>
/// <param name="Keep">By emulsion.</param>
/// <param name="Served">By point: its emulsion.</param>
/// <param name="Cost">[money/month]</param>
/// <param name="Bound">[money/month]</param>
internal sealed record ShelfSolution(bool[] Keep, int[] Served, double Cost, double Bound);
