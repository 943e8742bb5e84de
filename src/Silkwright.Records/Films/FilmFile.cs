using System.Security.Cryptography;

namespace Silkwright.Records.Films;

/// <summary>A film on its way into the folder: written under a temporary name, then renamed, so that nothing half-written ever bears a film's name.</summary>
internal static class FilmFile
{
    public const string IncomingSuffix = ".incoming";

    /// <summary>Most that is held in memory at once. [bytes]</summary>
    private const int BufferBytes = 1 << 16;

    /// <summary>Writes a film under a temporary name and tells what it is.</summary>
    public static async Task<IncomingFilm> ReceiveAsync(Stream content, string filmsPath, CancellationToken cancel)
    {
        var path = Path.Combine(filmsPath, $"{Guid.NewGuid():N}{IncomingSuffix}");
        try
        {
            using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
            await using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.Read);
            var buffer = new byte[BufferBytes];
            long bytes = 0;
            for (int read; (read = await content.ReadAsync(buffer, cancel)) > 0; bytes += read)
            {
                hash.AppendData(buffer, 0, read);
                await file.WriteAsync(buffer.AsMemory(0, read), cancel);
            }

            // On the disk before it gets its name: a power cut must not leave a named but empty film.
            await file.FlushAsync(cancel);
            RandomAccess.FlushToDisk(file.SafeFileHandle);
            return new IncomingFilm(path, Convert.ToHexStringLower(hash.GetHashAndReset()), bytes);
        }
        catch
        {
            File.Delete(path);
            throw;
        }
    }

    /// <summary>Gives a received film its name; the same film may have it already.</summary>
    public static void Settle(IncomingFilm incoming, string settledPath) => File.Move(incoming.Path, settledPath, overwrite: true);

    /// <summary>".tif" of "Base FINAL.TIF"; nothing where the name has no plain ending.</summary>
    public static string Ending(string fileName)
    {
        var ending = Path.GetExtension(fileName).ToLowerInvariant();
        return ending.Length is > 1 and <= 6 && ending.Skip(1).All(char.IsAsciiLetterOrDigit) ? ending : "";
    }

    /// <summary>The name without any folder, whichever system it came from.</summary>
    public static string NameOnly(string fileName) => fileName[(fileName.LastIndexOfAny(['/', '\\']) + 1)..];
}
