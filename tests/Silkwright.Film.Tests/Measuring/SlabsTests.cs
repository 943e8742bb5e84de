using Silkwright.Film.Measuring;

namespace Silkwright.Film.Tests.Measuring;

/// <summary>Pieces of bytes in memory and in a scratch file, against the pieces themselves.</summary>
public sealed class SlabsTests
{
    private const int Pieces = 80_000;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(Pieces * 400L)]
    [InlineData(100_000L)]
    public void Pieces_come_back_from_memory_and_from_the_file_while_others_are_added(long usual)
    {
        using var folder = new TestFolder();
        using var scratch = new ScratchFile(folder[""]);
        var slabs = new Slabs(usual, scratch);
        var places = new int[Pieces];
        _ = Parallel.For(0, 4, new ParallelOptions { CancellationToken = Cancel }, worker =>
        {
            var random = new Random(worker);
            for (var i = worker; i < Pieces; i += 4)
            {
                places[i] = slabs.Add(Piece(i));
                var earlier = worker + (4 * random.Next((i / 4) + 1));
                AssertHolds(slabs, places[earlier], earlier);
            }
        });

        // Far more than stays in memory, so most of it was read from the file.
        Assert.True(slabs.Bytes > 14_000_000, $"{slabs.Bytes} bytes");
        var order = new Random(5);
        for (var k = 0; k < Pieces; k++)
        {
            var i = order.Next(Pieces);
            AssertHolds(slabs, places[i], i);
        }
    }

    [Fact]
    public void The_scratch_file_has_no_name_others_could_open_it_by()
    {
        using var folder = new TestFolder();
        using var scratch = new ScratchFile(folder[""]);
        Assert.True(scratch.TryAdd([1, 2, 3], out var first));
        Assert.True(scratch.TryAdd([4, 5], out var second));
        if (!OperatingSystem.IsWindows())
            Assert.Empty(Directory.GetFileSystemEntries(folder[""]));
        var read = new byte[3];
        scratch.Read(first, read);
        Assert.Equal([1, 2, 3], read);
        scratch.Read(second, read.AsSpan(0, 2));
        Assert.Equal([4, 5, 3], read);
    }

    [Fact]
    public void Where_the_disk_takes_nothing_all_stays_in_memory()
    {
        using var folder = new TestFolder();
        using var scratch = new ScratchFile(folder["not there"]);
        var slabs = new Slabs(Pieces * 400L, scratch);
        var places = Enumerable.Range(0, Pieces).Select(i => slabs.Add(Piece(i))).ToArray();
        Assert.False(scratch.TryAdd([1], out _));
        for (var i = 0; i < Pieces; i++)
            AssertHolds(slabs, places[i], i);
    }

    private static byte[] Piece(int number)
    {
        var piece = new byte[8 + (number % 381)];
        new Random(number).NextBytes(piece);
        return piece;
    }

    private static void AssertHolds(Slabs slabs, int place, int number)
    {
        var piece = Piece(number);
        Assert.True(slabs.From(place)[..piece.Length].SequenceEqual(piece), $"piece {number}");
    }
}
