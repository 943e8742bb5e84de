using Silkwright.Film.Measuring;
using Silkwright.Film.Tests.Readers;

namespace Silkwright.Film.Tests.Measuring;

public sealed class WorkPartsTests
{
    [Fact]
    public void Parts_done_side_by_side_add_up_and_never_go_back()
    {
        var told = new Told();
        var work = new WorkParts(told, 0.25, 0.75);
        work.Part(0)!.Report(1);
        work.Part(1)!.Report(0.5);
        work.Part(1)!.Report(0.2);
        work.Part(1)!.Report(7);
        Assert.Equal([0.25, 0.625, 0.625, 1], told.Shares);
        Assert.Null(new WorkParts(null, 1).Part(0));
    }

    /// <summary>A film is a few steps of work, and the longest does not leave the bar standing.</summary>
    [Fact]
    public void Measuring_tells_how_far_it_is_all_the_way()
    {
        using var folder = new TestFolder();
        Tiffs.Write(folder["a.tif"], Bitmaps.Random(new Random(5), 900, 3000, 0.4, 30), 1, BitMiracle.LibTiff.Classic.Compression.CCITTFAX4, BitMiracle.LibTiff.Classic.Photometric.MINISWHITE, 64);
        var told = new Told();
        _ = FilmMeasurer.Measure(folder["a.tif"], new FilmOptions(600), told, TimeProvider.System, TestContext.Current.CancellationToken);
        Assert.Equal(told.Shares.Order(), told.Shares);
        Assert.Equal(1, told.Shares[^1]);
        Assert.True(told.Shares.Zip(told.Shares.Skip(1), (a, b) => b - a).Max() < 0.25, string.Join(' ', told.Shares));
    }

    private sealed class Told : IProgress<double>
    {
        private readonly Lock turn = new();

        public List<double> Shares { get; } = [];

        public void Report(double value)
        {
            lock (turn)
                Shares.Add(value);
        }
    }
}
