using System.Numerics;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Begins photons in the plane of the film's image: evenly over the weave's pitch and over the lamp's directions.</summary>
/// <remarks>
/// Places and directions come from a Kronecker sequence in five dimensions with the generalised golden ratio, shifted by the batch's keys: more even than chance, so that the
/// phase of the weave and the lamp's cone add little to the errors. Source: Kronecker sequences, any text on quasi-Monte Carlo; the ratio (x⁶ = x + 1) from memory.
/// </remarks>
internal readonly struct StencilLaunch
{
    private const float Unit = 1f / (1 << 24);

    /// <summary>2³² times the first five powers of 1/x with x⁶ = x + 1.</summary>
    private static readonly uint[] Strides = [3785032107, 3335640777, 2939605023, 2590590015, 2283013049];

    private readonly StencilTables tables;
    private readonly uint[] shifts;

    public StencilLaunch(StencilTables tables, ReadOnlySpan<uint> keys)
    {
        this.tables = tables;
        shifts = [keys[0], keys[1], keys[2], keys[3], keys[0] ^ BitOperations.RotateLeft(keys[3], 16)];
    }

    /// <summary>New photons for the lanes that wait.</summary>
    /// <param name="waiting">A bit for each lane.</param>
    /// <param name="count">Photons begun before.</param>
    public Start Begin(uint waiting, uint count)
    {
        Span<uint> chosen = stackalloc uint[16];
        Span<uint> counts = stackalloc uint[16];
        chosen.Clear();
        counts.Clear();
        for (; waiting != 0; waiting &= waiting - 1)
        {
            var lane = BitOperations.TrailingZeroCount(waiting);
            (chosen[lane], counts[lane]) = (uint.MaxValue, count++);
        }

        var number = Vector512.Create<uint>(counts);
        var one = Vector512<float>.One;
        var half = Vector512.Create(0.5f);
        var (around, aside) = LaneDirection.Around(Even(number, 0));
        var sine = Vector512.Sqrt(Even(number, 1)) * Vector512.Create(tables.SineOfHalfAngle);
        var across = Vector512.FusedMultiplyAdd(sine, around, Vector512.Create(tables.SineOfSlant));
        var along = sine * aside;
        if (tables.Lattice > 0)
            (across, along) = FromSources(across, along);
        // Snell's law on direction cosines along the surface is a division.
        var perIndex = Vector512.Create(1 / tables.FilmIndex);
        (across, along) = (across * perIndex, along * perIndex);
        var pitch = Vector512.Create(tables.Pitch);
        return new Start(
            Vector512.Create<uint>(chosen),
            number,
            (Even(number, 2) - half) * pitch,
            (Even(number, 3) - half) * pitch,
            Vector512.ConditionalSelect(Vector512.LessThan(Even(number, 4), half), -one, one),
            (across * Vector512.Create(tables.CosineOfAngle)) + (along * Vector512.Create(tables.SineOfAngle)),
            (along * Vector512.Create(tables.CosineOfAngle)) - (across * Vector512.Create(tables.SineOfAngle)),
            Vector512.Sqrt(Vector512.Max(one - (across * across) - (along * along), Vector512.Create(1e-6f))));
    }

    /// <summary>Directions moved to the nearest source of a square array.</summary>
    private (Vector512<float> Across, Vector512<float> Along) FromSources(Vector512<float> across, Vector512<float> along)
    {
        var (one, step, perStep) = (Vector512<float>.One, Vector512.Create(tables.Lattice), Vector512.Create(1 / tables.Lattice));
        var cosine = Vector512.Sqrt(Vector512.Max(one - (across * across) - (along * along), Vector512.Create(1e-6f)));
        var tangentAcross = Vector512.Floor((across / cosine * perStep) + Vector512.Create(0.5f)) * step;
        var tangentAlong = Vector512.Floor((along / cosine * perStep) + Vector512.Create(0.5f)) * step;
        var length = Vector512.Sqrt(one + (tangentAcross * tangentAcross) + (tangentAlong * tangentAlong));
        return (tangentAcross / length, tangentAlong / length);
    }

    private Vector512<float> Even(Vector512<uint> number, int dimension) =>
        Vector512.ConvertToSingle((((number * Vector512.Create(Strides[dimension])) + Vector512.Create(shifts[dimension])) >>> 8).AsInt32()) * Vector512.Create(Unit);

    /// <summary>Photons at their start, in the chosen lanes.</summary>
    internal readonly record struct Start(
        Vector512<uint> Chosen, Vector512<uint> Counts, Vector512<float> U, Vector512<float> V, Vector512<float> Side, Vector512<float> DU, Vector512<float> DV, Vector512<float> DZ);
}
