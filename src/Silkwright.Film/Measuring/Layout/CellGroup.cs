namespace Silkwright.Film.Measuring.Layout;

/// <summary>What encloses a group of cells, ends one past the last, and how many pixels of it print.</summary>
internal readonly record struct CellGroup(int Left, int Top, int Right, int Bottom, long Pixels);
