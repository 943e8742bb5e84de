using Silkwright.Records.Store;

namespace Silkwright.Web.Measuring;

/// <summary>When the program starts, takes away what pictures are drawn from of films nobody has looked at for long; it is made again when somebody does.</summary>
public sealed class TilesSweep(DataFolder folder, TimeProvider time, ILogger<TilesSweep> log) : IHostedService
{
    /// <summary>Our own choice: a film not looked at for two months is a job that is done.</summary>
    private static readonly TimeSpan KeptFor = TimeSpan.FromDays(60);

    /// <summary>Marks a film's files as looked at now.</summary>
    public static void Touch(string besidePath, TimeProvider time)
    {
        foreach (var file in Directory.GetFiles(Path.GetDirectoryName(besidePath)!, Path.GetFileName(besidePath) + ".*"))
            File.SetLastWriteTimeUtc(file, time.GetUtcNow().UtcDateTime);
    }

    public Task StartAsync(CancellationToken cancellationToken)
    {
        if (!Directory.Exists(folder.TilesPath))
            return Task.CompletedTask;
        foreach (var file in Directory.GetFiles(folder.TilesPath).Where(file => time.GetUtcNow().UtcDateTime - File.GetLastWriteTimeUtc(file) > KeptFor))
        {
            try
            {
                File.Delete(file);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                log.LogWarning(fault, "{File} could not be deleted; it is only a copy of what its film tells", file);
            }
        }

        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
