using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Tables of sixteen entries, looked up for sixteen photons at once.</summary>
internal static class Tables
{
    public static Vector512<float> Of<T>(IReadOnlyList<T> all, Func<T, double> value)
    {
        var entries = new float[Vector512<float>.Count];
        for (var i = 0; i < all.Count; i++)
            entries[i] = (float)value(all[i]);
        return Vector512.Create(entries);
    }
}
