namespace Silkwright.Film.Readers;

/// <summary>An open film that gives its rows from the top down, one strip in memory at a time.</summary>
public interface IFilmSource : IDisposable
{
    FilmHeader Header { get; }

    /// <summary>Gives rows <paramref name="first"/> to <paramref name="first"/> + <paramref name="count"/> - 1.</summary>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The file is damaged there.</exception>
    void ReadRows(int first, int count, RowSink sink, CancellationToken cancel);
}
