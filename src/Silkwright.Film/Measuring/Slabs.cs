using System.Runtime.CompilerServices;

namespace Silkwright.Film.Measuring;

/// <summary>Pieces of bytes one behind another. Where there is a scratch file, only the first <see cref="MostHeld"/> slabs of them and the last one stay in memory.</summary>
/// <remarks>
/// Several threads may add and read at once. A slab that is full never changes, so each thread reads those from the file into buffers of its own: a film is worked on place by place, and a few
/// are enough.
/// </remarks>
/// <param name="usual">Bytes that are usually added; room is made for more, since a piece that takes another's place does not give that up.</param>
/// <param name="scratch">Takes what is not held; none: all is held.</param>
internal sealed class Slabs(long usual, ScratchFile? scratch)
{
    /// <summary>Pieces begin at multiples of this. [byte]</summary>
    public const int Granule = 8;

    /// <summary>Granules of a slab: 64 KiB.</summary>
    private const int Granules = 1 << Bits;
    private const int Bits = 13;

    /// <summary>Slabs that stay in memory though there is a scratch file: 8 MiB.</summary>
    private const int MostHeld = 128;

    /// <summary>Slabs of the file that a thread has at hand: 1 MiB.</summary>
    private const int AtHand = 16;

    private readonly Lock adding = new();

    // Replaced as a whole where there is no more room: whoever reads the old ones meanwhile finds there what was added before.
    private byte[]?[] held = new byte[]?[(usual / (Granules * Granule) * 17 / 16) + 2];
    private long[] places = scratch is null ? [] : new long[(usual / (Granules * Granule) * 17 / 16) + 2];
    private ThreadLocal<(int Slab, byte[] Bytes)[]> atHand = NoneAtHand();
    private int end;

    /// <summary>Memory and scratch taken. [byte]</summary>
    public long Bytes => (long)Granule * Volatile.Read(ref end);

    /// <summary>Adds a piece, no longer than a slab.</summary>
    /// <returns>Its place: granules before it.</returns>
    public int Add(ReadOnlySpan<byte> piece)
    {
        var granules = (piece.Length + Granule - 1) / Granule;
        lock (adding)
        {
            if ((end & (Granules - 1)) + granules > Granules || (end & (Granules - 1)) == 0)
                Begin();
            var place = end;
            end += granules;
            piece.CopyTo(held[place >> Bits].AsSpan((place & (Granules - 1)) * Granule));
            return place;
        }
    }

    /// <summary>The bytes from a piece's first on; those after its last are not its own.</summary>
    public ReadOnlySpan<byte> From(int place) => (Volatile.Read(ref Volatile.Read(ref held)[place >> Bits]) ?? Read(place >> Bits)).AsSpan((place & (Granules - 1)) * Granule);

    /// <summary>Forgets all pieces; the memory stays, to be used again. No other thread may add or read meanwhile.</summary>
    public void Clear()
    {
        end = 0;
        if (scratch is not null)
            atHand = NoneAtHand();
    }

    private static ThreadLocal<(int Slab, byte[] Bytes)[]> NoneAtHand() => new(() => new (int, byte[])[AtHand]);

    /// <summary>Goes on in the next slab.</summary>
    private void Begin()
    {
        var next = (end + Granules - 1) >> Bits;
        if (next == held.Length)
            MakeRoom();
        if (scratch is not null && next > MostHeld && scratch.TryAdd(held[next - 1], out places[next - 1]))
            Volatile.Write(ref held[next - 1], null);
        held[next] ??= GC.AllocateUninitializedArray<byte>(Granules * Granule);
        end = next << Bits;
    }

    private void MakeRoom()
    {
        if (scratch is not null)
            Volatile.Write(ref places, [.. places, .. new long[places.Length]]);
        Volatile.Write(ref held, [.. held, .. new byte[]?[held.Length]]);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private byte[] Read(int slab)
    {
        ref var near = ref atHand.Value![slab % AtHand];
        if (near.Bytes is null || near.Slab != slab)
        {
            near = (-1, near.Bytes ?? GC.AllocateUninitializedArray<byte>(Granules * Granule));
            scratch!.Read(Volatile.Read(ref places)[slab], near.Bytes);
            near.Slab = slab;
        }

        return near.Bytes;
    }
}
