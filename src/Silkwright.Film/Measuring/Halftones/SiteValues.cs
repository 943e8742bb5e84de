namespace Silkwright.Film.Measuring.Halftones;

/// <summary>A value for each site of a lattice laid over a film; stretches of sites that have none take no memory.</summary>
/// <param name="length">Sites.</param>
/// <param name="none">What a site has that was given none.</param>
internal sealed class SiteValues<T>(int length, T none)
    where T : struct, IEquatable<T>
{
    /// <summary>Sites of a lattice's row that are kept together: a few centimetres of film.</summary>
    private const int Together = 64;

    private readonly T[]?[] stretches = new T[]?[(length / Together) + 1];

    public int Length => length;

    public T this[int site]
    {
        get => stretches[site / Together] is { } stretch ? stretch[site % Together] : none;
        set
        {
            ref var stretch = ref stretches[site / Together];
            if (stretch is null)
            {
                stretch = new T[Together];
                Array.Fill(stretch, none);
            }

            stretch[site % Together] = value;
        }
    }

    /// <summary>The sites that were given a value, in their order.</summary>
    public IEnumerable<(int Site, T Value)> Given()
    {
        for (var k = 0; k < stretches.Length; k++)
        {
            for (var i = 0; stretches[k] is { } stretch && i < Together; i++)
            {
                if (!stretch[i].Equals(none))
                    yield return ((k * Together) + i, stretch[i]);
            }
        }
    }
}
