using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Film.Measuring;

/// <summary>Whole rows of packed words, a vector at a time.</summary>
internal static class PackedRows
{
    /// <summary>into &amp;= other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void And(Span<ulong> into, ReadOnlySpan<ulong> other)
    {
        ref var a = ref MemoryMarshal.GetReference(into);
        ref var b = ref MemoryMarshal.GetReference(other[..into.Length]);
        var i = 0;
        for (; Vector512.IsHardwareAccelerated && i <= into.Length - Vector512<ulong>.Count; i += Vector512<ulong>.Count)
            (Vector512.LoadUnsafe(ref a, (nuint)i) & Vector512.LoadUnsafe(ref b, (nuint)i)).StoreUnsafe(ref a, (nuint)i);
        for (; i <= into.Length - Vector<ulong>.Count; i += Vector<ulong>.Count)
            (Vector.LoadUnsafe(ref a, (nuint)i) & Vector.LoadUnsafe(ref b, (nuint)i)).StoreUnsafe(ref a, (nuint)i);
        for (; i < into.Length; i++)
            into[i] &= other[i];
    }

    /// <summary>into |= other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Or(Span<ulong> into, ReadOnlySpan<ulong> other)
    {
        ref var a = ref MemoryMarshal.GetReference(into);
        ref var b = ref MemoryMarshal.GetReference(other[..into.Length]);
        var i = 0;
        for (; Vector512.IsHardwareAccelerated && i <= into.Length - Vector512<ulong>.Count; i += Vector512<ulong>.Count)
            (Vector512.LoadUnsafe(ref a, (nuint)i) | Vector512.LoadUnsafe(ref b, (nuint)i)).StoreUnsafe(ref a, (nuint)i);
        for (; i <= into.Length - Vector<ulong>.Count; i += Vector<ulong>.Count)
            (Vector.LoadUnsafe(ref a, (nuint)i) | Vector.LoadUnsafe(ref b, (nuint)i)).StoreUnsafe(ref a, (nuint)i);
        for (; i < into.Length; i++)
            into[i] |= other[i];
    }

    /// <summary>into = value.</summary>
    public static void Fill(Span<ulong> into, ulong value)
    {
        ref var a = ref MemoryMarshal.GetReference(into);
        var all = new Vector<ulong>(value);
        var i = 0;
        for (; i <= into.Length - Vector<ulong>.Count; i += Vector<ulong>.Count)
            all.StoreUnsafe(ref a, (nuint)i);
        for (; i < into.Length; i++)
            into[i] = value;
    }

    /// <summary>Whether every word is <paramref name="value"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool IsAll(ReadOnlySpan<ulong> row, ulong value)
    {
        ref var a = ref MemoryMarshal.GetReference(row);
        var all = new Vector<ulong>(value);
        var i = 0;
        for (; i <= row.Length - Vector<ulong>.Count; i += Vector<ulong>.Count)
        {
            if (Vector.LoadUnsafe(ref a, (nuint)i) != all)
                return false;
        }

        for (; i < row.Length; i++)
        {
            if (row[i] != value)
                return false;
        }

        return true;
    }

    /// <summary>any |= row and all &amp;= row.</summary>
    public static void Gather(ReadOnlySpan<ulong> row, Span<ulong> any, Span<ulong> all)
    {
        Or(any, row);
        And(all, row);
    }
}
