namespace Silkwright.Film.Measuring;

/// <summary>Measures what a film demands.</summary>
public static class FilmMeasurer
{
    /// <summary>Measures one film file.</summary>
    /// <param name="path">A 1-bit or 8-bit TIFF, or a PNG.</param>
    /// <param name="options">What the file cannot say.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="time">Clock for the speed.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The file is missing, damaged or not a film.</exception>
    public static FilmReading Measure(
        string path, FilmOptions options, IProgress<double>? progress, TimeProvider time, CancellationToken cancel) =>
        throw new NotImplementedException();
}
