namespace Silkwright.Records.Films;

/// <summary>A film kept under the hash of what it holds: the same film twice is one film.</summary>
public sealed record StoredFilm
{
    /// <summary>SHA-256 of the bytes, lower-case hex.</summary>
    public required string Hash { get; init; }

    /// <summary>Its name when it was first given, without a folder.</summary>
    public required string FileName { get; init; }

    public required long Bytes { get; init; }

    /// <summary>Relative to the data folder, with forward slashes: <see cref="Store.DataFolder.FullPath"/>.</summary>
    public required string StoredPath { get; init; }

    public required DateTimeOffset AddedAt { get; init; }

    public required string AddedBy { get; init; }
}
