namespace Silkwright.Light;

/// <summary>Four words for each block of photons: SplitMix64 (Steele, Lea and Flood 2014) on seed and block.</summary>
internal static class BlockKeys
{
    private const ulong Gamma = 0x9E3779B97F4A7C15UL;

    public static uint[] Of(ulong seed, ulong block)
    {
        var state = Mixed(seed) ^ Mixed(unchecked((block + 1) * Gamma));
        var (first, second) = (Mixed(unchecked(state + Gamma)), Mixed(unchecked(state + Gamma + Gamma)));
        return [(uint)first, (uint)(first >> 32), (uint)second, (uint)(second >> 32)];
    }

    private static ulong Mixed(ulong word)
    {
        word = unchecked((word ^ (word >> 30)) * 0xBF58476D1CE4E5B9UL);
        word = unchecked((word ^ (word >> 27)) * 0x94D049BB133111EBUL);
        return word ^ (word >> 31);
    }
}
