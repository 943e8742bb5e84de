using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Silkwright.Film.Measuring;

/// <summary>Whole rows of packed words against each other, a vector at a time.</summary>
/// <remarks>Compiled for speed at first call: a film is measured once in a process, too soon for what is found while running to pay.</remarks>
internal static class PackedRows
{
    /// <summary>into &amp;= other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void And(Span<ulong> into, ReadOnlySpan<ulong> other)
    {
        ref var a = ref MemoryMarshal.GetReference(into);
        ref var b = ref MemoryMarshal.GetReference(other[..into.Length]);
        var i = 0;
        for (; i <= into.Length - Vector<ulong>.Count; i += Vector<ulong>.Count)
            (Vector.LoadUnsafe(ref a, (nuint)i) & Vector.LoadUnsafe(ref b, (nuint)i)).StoreUnsafe(ref a, (nuint)i);
        for (; i < into.Length; i++)
            into[i] &= other[i];
    }

    /// <summary>into |= other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Or(Span<ulong> into, ReadOnlySpan<ulong> other)
    {
        ref var a = ref MemoryMarshal.GetReference(into);
        ref var b = ref MemoryMarshal.GetReference(other[..into.Length]);
        var i = 0;
        for (; i <= into.Length - Vector<ulong>.Count; i += Vector<ulong>.Count)
            (Vector.LoadUnsafe(ref a, (nuint)i) | Vector.LoadUnsafe(ref b, (nuint)i)).StoreUnsafe(ref a, (nuint)i);
        for (; i < into.Length; i++)
            into[i] |= other[i];
    }

    /// <summary>any |= row and all &amp;= row.</summary>
    public static void Gather(ReadOnlySpan<ulong> row, Span<ulong> any, Span<ulong> all)
    {
        Or(any, row);
        And(all, row);
    }
}
