using Microsoft.Extensions.Logging.Abstractions;
using Silkwright.Records.Store;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Tests.Measuring;

public sealed class TilesSweepTests
{
    [Fact]
    public async Task What_nobody_has_looked_at_for_two_months_is_taken_away_at_the_start()
    {
        var folder = Directory.CreateTempSubdirectory("silkwright-tiles-");
        try
        {
            var data = DataFolder.Open(folder.FullName);
            _ = Directory.CreateDirectory(data.TilesPath);
            foreach (var (name, days) in new[] { ("old.greys", 61), ("old.rows", 61), ("looked.greys", 300), ("new.greys", 59) })
            {
                var path = Path.Combine(data.TilesPath, name);
                await File.WriteAllBytesAsync(path, [1], TestContext.Current.CancellationToken);
                File.SetLastWriteTimeUtc(path, TimeProvider.System.GetUtcNow().UtcDateTime.AddDays(-days));
            }

            TilesSweep.Touch(Path.Combine(data.TilesPath, "looked"), TimeProvider.System);
            await new TilesSweep(data, TimeProvider.System, NullLogger<TilesSweep>.Instance).StartAsync(TestContext.Current.CancellationToken);
            Assert.Equal(["looked.greys", "new.greys"], Directory.GetFiles(data.TilesPath).Select(Path.GetFileName).Order());
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
