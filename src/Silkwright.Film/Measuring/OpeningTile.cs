namespace Silkwright.Film.Measuring;

/// <summary>A part of a film that an opening works out at once.</summary>
/// <param name="Word">Left edge. [word]</param>
/// <param name="Words">Words across.</param>
/// <param name="Row">Top edge.</param>
/// <param name="Rows">Rows.</param>
internal readonly record struct OpeningTile(int Word, int Words, int Row, int Rows);
