using Microsoft.Win32.SafeHandles;

namespace Silkwright.Film.Measuring;

/// <summary>A file for what of a film is not kept in memory. It is made when first needed, has no name where the system allows that, and is gone with the process.</summary>
/// <remarks>Several threads may add and read at once.</remarks>
/// <param name="folder">Where; none: the system's for temporary files.</param>
internal sealed class ScratchFile(string? folder = null) : IDisposable
{
    private readonly Lock adding = new();
    private SafeFileHandle? file;
    private long end;
    private bool full;

    /// <summary>Adds bytes.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="at">Where they are.</param>
    /// <returns>False, now and ever after, where the disk takes no more: then the caller keeps them in memory, and only that is lost.</returns>
    public bool TryAdd(ReadOnlySpan<byte> bytes, out long at)
    {
        lock (adding)
        {
            at = end;
            try
            {
                if (full)
                    return false;
                RandomAccess.Write(file ??= Make(), bytes, at);
                end += bytes.Length;
                return true;
            }
            catch (Exception refusal) when (refusal is IOException or UnauthorizedAccessException)
            {
                full = true;
                return false;
            }
        }
    }

    /// <summary>Reads bytes that were added.</summary>
    /// <exception cref="IOException">The disk does not give back what it took.</exception>
    public void Read(long at, Span<byte> into)
    {
        for (var done = 0; done < into.Length;)
        {
            var read = RandomAccess.Read(file!, into[done..], at + done);
            done += read > 0 ? read : throw new EndOfStreamException();
        }
    }

    public void Dispose() => file?.Dispose();

    private SafeFileHandle Make()
    {
        var path = Path.Combine(folder ?? Path.GetTempPath(), $"silkwright-{Path.GetRandomFileName()}");
        if (OperatingSystem.IsWindows())
            return File.OpenHandle(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, FileOptions.DeleteOnClose);
        var made = File.OpenHandle(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None);

        // A film is nobody else's business, and a killed process tidies nothing up: without a name neither matters.
        File.Delete(path);
        return made;
    }
}
