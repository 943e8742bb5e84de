namespace Silkwright.Statistics.Mixed;

/// <summary>Work on all blocks, shared out among threads so that sums do not hang on how many there are.</summary>
internal static class BlockParts
{
    /// <summary>Parts that the blocks are summed in, whoever does them.</summary>
    public const int Count = 8;

    /// <summary>Blocks below which threads cost more than they bring.</summary>
    private const int LeastForThreads = 200;

    /// <param name="blocks">How many there are.</param>
    /// <param name="work">Takes a part's number, its first block, and the one after its last.</param>
    public static void ForEach(int blocks, Action<int, int, int> work)
    {
        void Part(int part) => work(part, (int)((long)blocks * part / Count), (int)((long)blocks * (part + 1) / Count));
        if (blocks < LeastForThreads)
        {
            for (var part = 0; part < Count; part++)
                Part(part);
        }
        else
        {
            _ = Parallel.For(0, Count, Part);
        }
    }
}
