namespace Silkwright.Film.Readers;

/// <summary>Takes one row of a film as the runs of its image: starts and ends (one past the last pixel) in turn, rising; good only during the call.</summary>
public delegate void RunSink(int y, ReadOnlySpan<int> edges);
