using System.Runtime.CompilerServices;

namespace Silkwright.Film.Measuring.Halftones;

/// <summary>A number for each site of a lattice laid over a film; stretches of sites that have none take no memory.</summary>
/// <param name="length">Sites.</param>
/// <param name="none">What a site has that was given none.</param>
internal sealed class SiteValues(int length, int none)
{
    /// <summary>Sites of a lattice's row that are kept together: a few centimetres of film.</summary>
    private const int Together = 64;

    private readonly int[]?[] stretches = new int[]?[(length / Together) + 1];

    public int Length => length;

    public int this[int site]
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => stretches[site / Together] is { } stretch ? stretch[site % Together] : none;
        set
        {
            ref var stretch = ref stretches[site / Together];
            if (stretch is null)
            {
                stretch = new int[Together];
                Array.Fill(stretch, none);
            }

            stretch[site % Together] = value;
        }
    }

    /// <summary>The sites that were given a value, in their order.</summary>
    public IEnumerable<(int Site, int Value)> Given()
    {
        for (var k = 0; k < stretches.Length; k++)
        {
            for (var i = 0; stretches[k] is { } stretch && i < Together; i++)
            {
                if (stretch[i] != none)
                    yield return ((k * Together) + i, stretch[i]);
            }
        }
    }
}
