namespace Silkwright.Statistics.Mixed;

/// <summary>Effects that differ from level to level of a grouping by chance: a shop's, an operator's.</summary>
/// <param name="Name">As messages name it.</param>
/// <param name="LevelOfRow">Each row's level, from 0.</param>
/// <param name="Levels">How many levels there are; one may have no rows.</param>
/// <param name="Columns">What each of a level's effects is multiplied by, row by row; a column of ones is the level's own height. One or more.</param>
/// <param name="Prior">What is believed of the spread of a term whose levels have one effect each; none: the rows alone tell.</param>
/// <param name="Crosses">Kept among the terms that cross the outer one even where it lies within: what rows tell of it can then be asked for, or be given.</param>
/// <remarks>The effects of one level may be correlated; those of different levels, and of different terms, are not.</remarks>
public sealed record RandomTerm(string Name, IReadOnlyList<int> LevelOfRow, int Levels, IReadOnlyList<IReadOnlyList<double>> Columns, RatioPrior? Prior = null, bool Crosses = false)
{
    /// <summary>Effects of a level.</summary>
    public int Width => Columns.Count;

    /// <summary>A term whose levels differ in height alone.</summary>
    public static RandomTerm Height(string name, IReadOnlyList<int> levelOfRow, int levels) =>
        new(name, levelOfRow, levels, [[.. Enumerable.Repeat(1.0, levelOfRow.Count)]]);
}
