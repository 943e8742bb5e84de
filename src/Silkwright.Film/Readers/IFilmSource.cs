namespace Silkwright.Film.Readers;

/// <summary>An open film that gives its rows from the top down, one strip in memory at a time.</summary>
public interface IFilmSource : IDisposable
{
    FilmHeader Header { get; }

    /// <summary>Gives rows <paramref name="first"/> to <paramref name="first"/> + <paramref name="count"/> - 1.</summary>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The file is damaged there.</exception>
    void ReadRows(int first, int count, RowSink sink, CancellationToken cancel);

    /// <summary>Rows that are packed together: reading may start at each multiple of it without the rows above. All of them where there is no such place.</summary>
    int RowsTogether => Header.HeightPx;

    /// <summary>Gives the same rows as runs. Several threads may read at once, each its own rows.</summary>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The file is damaged there.</exception>
    void ReadRuns(int first, int count, RunSink sink, CancellationToken cancel) => RowRuns.Read(this, first, count, sink, cancel);
}
