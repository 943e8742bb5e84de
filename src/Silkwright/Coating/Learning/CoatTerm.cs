using Silkwright.Statistics.Mixed;

namespace Silkwright.Coating.Learning;

/// <summary>One grouping of coats and what a coat's effect in it is multiplied by.</summary>
/// <param name="Name">As answers name it.</param>
/// <param name="Level">Key of a coat's level; none where it has none.</param>
/// <param name="Column">[µm] for one standard deviation of what is believed.</param>
/// <param name="Shared">Whether it is the same in every shop.</param>
/// <param name="Known">Whether the spread is taken as believed, not learnt.</param>
internal sealed record CoatTerm(string Name, Func<CoatObservation, object?> Level, Func<CoatColumns, double> Column, bool Shared = false, bool Known = false)
{
    public RatioPrior Prior => new(1, Known ? null : CoatSpreads.Spread);
}
