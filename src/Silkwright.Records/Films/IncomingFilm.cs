namespace Silkwright.Records.Films;

/// <summary>A film received but not yet settled.</summary>
/// <param name="Path">Its temporary file.</param>
/// <param name="Hash">SHA-256, lower-case hex.</param>
/// <param name="Bytes">Length.</param>
internal sealed record IncomingFilm(string Path, string Hash, long Bytes);
