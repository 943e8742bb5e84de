namespace Silkwright.Film.Readers;

/// <summary>Takes one row of a film, image bits set; the span is only good during the call.</summary>
public delegate void RowSink(int y, ReadOnlySpan<ulong> row);
