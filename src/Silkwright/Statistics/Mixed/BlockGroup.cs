namespace Silkwright.Statistics.Mixed;

/// <summary>Columns of one level of a term within a block.</summary>
/// <param name="Term">Number of the term.</param>
/// <param name="Level">Number of the level.</param>
/// <param name="Offset">First column.</param>
internal readonly record struct BlockGroup(int Term, int Level, int Offset);
