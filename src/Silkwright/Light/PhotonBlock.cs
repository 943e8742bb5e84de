using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Follows a block of photons through a slab, sixteen side by side; a lane whose photon has ended takes the next one.</summary>
/// <remarks>
/// Only depth and the cosine of the direction matter where layers have no end to the sides. Depth counts in mean free paths of the layer, so
/// that a free path needs no division. docs/engines/light.md, equations 1 to 6.
/// </remarks>
internal static class PhotonBlock
{
    private const int Lanes = 16;

    /// <summary>Sums beside those of the layers.</summary>
    private const int Sums = 7;

    /// <summary>Lanes that wait before new photons are begun.</summary>
    private const int LanesToBegin = 3;

    /// <summary>A photon weaker than this ends by lot, ...</summary>
    private const float Weak = 0.04f;

    /// <summary>... or goes on with this many times its weight, once in as many.</summary>
    private const float Stronger = 5;

    /// <summary>Steps between two looks at whether to stop: in thick layers without absorption one block may take hours.</summary>
    private const int StepsToAsk = 4096;

    /// <summary>Nearer to level than this no direction is reckoned with.</summary>
    private const float Level = 1e-7f;

    private static readonly Vector512<uint> LaneBits = Vector512.Create(1u, 2, 4, 8, 16, 32, 64, 128, 256, 512, 1024, 2048, 4096, 8192, 16384, 32768);
    private static readonly Vector512<uint> LaneNumbers = Vector512.Create(0u, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15);

    /// <summary>Where the loop runs fastest: the best of the four there are, by ./bench light. <see cref="StackPlace"/></summary>
    private const int Place = 16;

    /// <param name="slab">The layers.</param>
    /// <param name="keys">Four words made of the seed and the block's number.</param>
    /// <param name="photons">How many.</param>
    /// <param name="cancel">Stops the work.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static SlabTally Follow(SlabTables slab, ReadOnlySpan<uint> keys, int photons, CancellationToken cancel)
    {
        Span<byte> mark = stackalloc byte[StackPlace.Line];
        var sums = LaneSum.Within(stackalloc byte[LaneSum.Room(Sums + SlabCase.MostLayers) + StackPlace.BytesTo(mark, Place)]);
        return slab.IsPlain ? Follow<Plain>(slab, keys, photons, sums, cancel) : Follow<Layered>(slab, keys, photons, sums, cancel);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static SlabTally Follow<TKind>(SlabTables slab, ReadOnlySpan<uint> keys, int photons, Span<LaneSum> sums, CancellationToken cancel)
        where TKind : struct, ISlabKind
    {
        var (zero, one) = (Vector512<float>.Zero, Vector512<float>.One);
        var random = default(LaneRandom);
        var (depth, cosine, weight, path, absorbed) = (zero, one, zero, zero, zero);
        var layer = Vector512<int>.One;
        var (alive, straight) = (zero, zero);
        ref var outSum = ref sums[0];
        ref var outSquares = ref sums[1];
        ref var below = ref sums[2];
        ref var belowSquares = ref sums[3];
        ref var unscattered = ref sums[4];
        ref var absorbedSquares = ref sums[5];
        ref var roulette = ref sums[6];
        var absorbedIn = sums[Sums..];
        ref var absorbedAll = ref absorbedIn[0];
        var begun = 0;
        var sinceAsked = 0;
        for (uint turn = 0; ;)
        {
            if (++sinceAsked == StepsToAsk)
            {
                cancel.ThrowIfCancellationRequested();
                sinceAsked = 0;
            }

            // Begin new photons where enough lanes wait.
            var fresh = zero;
            var waiting = (uint)Vector512.ExtractMostSignificantBits(~alive) & 0xFFFF;
            if (begun < photons && BitOperations.PopCount(waiting) >= LanesToBegin)
            {
                while (BitOperations.PopCount(waiting) > photons - begun)
                    waiting &= waiting - 1;
                begun += BitOperations.PopCount(waiting);
                var chosen = Vector512.Equals(Vector512.Create(waiting) & LaneBits, LaneBits);
                random.Begin(chosen, Vector512.Create(turn++ * Lanes) + LaneNumbers, keys);
                fresh = chosen.AsSingle();
                alive |= fresh;
                straight |= fresh;
                depth = Vector512.ConditionalSelect(fresh, zero, depth);
                cosine = Vector512.ConditionalSelect(fresh, one, cosine);
                weight = Vector512.ConditionalSelect(fresh, Vector512.Create(slab.Entering), weight);
                absorbed = Vector512.ConditionalSelect(fresh, zero, absorbed);
                layer = Vector512.ConditionalSelect(chosen.AsInt32(), Vector512<int>.One, layer);
            }
            else if (waiting == 0xFFFF)
            {
                break;
            }

            // A new free path for those begun and those that have interacted: what is left of a path that met a surface goes on behind it.
            var spent = Vector512.LessThanOrEqual(path, zero) | fresh;
            path = Vector512.ConditionalSelect(spent, -LaneMath.Log(one - random.Next()), path);

            // Where does the path end: within the layer, or at its surface?
            var thickness = Of<TKind>(slab.Depth, layer);
            var down = Vector512.GreaterThan(cosine, zero);
            var steep = Vector512.Max(Vector512.Abs(cosine), Vector512.Create(Level));
            var toSurface = Vector512.ConditionalSelect(down, thickness - depth, depth);
            var meets = Vector512.GreaterThanOrEqual(path * steep, toSurface) & alive;
            var stays = Vector512.AndNot(alive, meets);

            // At a surface.
            var leaves = meets;
            if (TKind.Layered)
            {
                var next = layer + Vector512.ConditionalSelect(down.AsInt32(), Vector512<int>.One, Vector512<int>.AllBitsSet);
                var (thrownBack, behind) = Fresnel.Of(Of<TKind>(slab.Index, layer), Vector512.Shuffle(slab.Index, next), Vector512.Abs(cosine));
                var back = meets & Vector512.LessThan(random.Next(), thrownBack);
                var passes = Vector512.AndNot(meets, back);
                path = Vector512.ConditionalSelect(meets, Vector512.Max(path - (toSurface / steep), Vector512.Create(float.Epsilon)), path);
                depth = Vector512.ConditionalSelect(back, Vector512.ConditionalSelect(down, thickness, zero), depth);
                depth = Vector512.ConditionalSelect(passes, Vector512.ConditionalSelect(down, zero, Vector512.Shuffle(slab.Depth, next)), depth);
                cosine = Vector512.ConditionalSelect(back, -cosine, cosine);
                cosine = Vector512.ConditionalSelect(passes, Vector512.ConditionalSelect(down, behind, -behind), cosine);
                layer = Vector512.ConditionalSelect(passes.AsInt32(), next, layer);
                leaves = passes & (Vector512.Equals(next, Vector512<int>.Zero) | Vector512.Equals(next, Vector512.Create(slab.Layers + 1))).AsSingle();
            }

            if (leaves != zero)
            {
                var leaving = Vector512.ConditionalSelect(leaves, weight, zero);
                var leavingBelow = Vector512.ConditionalSelect(down, leaving, zero);
                outSum.Add(leaving);
                outSquares.Add(leaving * leaving);
                below.Add(leavingBelow);
                belowSquares.Add(leavingBelow * leavingBelow);
                unscattered.Add(Vector512.ConditionalSelect(straight, leavingBelow, zero));
                var lost = Vector512.ConditionalSelect(leaves, absorbed, zero);
                absorbedSquares.Add(lost * lost);
                alive = Vector512.AndNot(alive, leaves);
            }

            // Within the layer: a part is absorbed, the rest scattered.
            depth = Vector512.ConditionalSelect(stays, Vector512.FusedMultiplyAdd(path, cosine, depth), depth);
            path = Vector512.ConditionalSelect(stays, zero, path);
            var kept = weight * Of<TKind>(slab.Albedo, layer);
            if (TKind.Layered)
            {
                for (var l = 0; l < slab.Layers; l++)
                {
                    var here = stays & Vector512.Equals(layer, Vector512.Create(l + 1)).AsSingle();
                    absorbedIn[l].AddLoss(Vector512.ConditionalSelect(here, weight, zero), Vector512.ConditionalSelect(here, kept, zero));
                }
            }
            else
            {
                absorbedAll.AddLoss(Vector512.ConditionalSelect(stays, weight, zero), Vector512.ConditionalSelect(stays, kept, zero));
            }

            absorbed += Vector512.ConditionalSelect(stays, weight - kept, zero);
            weight = Vector512.ConditionalSelect(stays, kept, weight);
            straight = Vector512.AndNot(straight, stays);
            cosine = Vector512.ConditionalSelect(stays, Scattered<TKind>(slab, layer, cosine, random.Next(), random.Next()), cosine);

            var weak = stays & Vector512.LessThan(weight, Vector512.Create(Weak));
            if (weak != zero)
            {
                var goesOn = Vector512.LessThan(random.Next() * Stronger, one);
                var after = Vector512.ConditionalSelect(weak, Vector512.ConditionalSelect(goesOn, weight * Stronger, zero), weight);
                roulette.AddLoss(Vector512.ConditionalSelect(weak, weight, zero), Vector512.ConditionalSelect(weak, after, zero));
                weight = after;
                var ends = Vector512.AndNot(weak, goesOn);
                var lost = Vector512.ConditionalSelect(ends, absorbed, zero);
                absorbedSquares.Add(lost * lost);
                alive = Vector512.AndNot(alive, ends);
            }
        }

        var tally = new SlabTally
        {
            Out = outSum.Total(),
            OutSquares = outSquares.Total(),
            Below = below.Total(),
            BelowSquares = belowSquares.Total(),
            Unscattered = unscattered.Total(),
            AbsorbedSquares = absorbedSquares.Total(),
            Roulette = roulette.Total(),
            Absorbed = new double[slab.Layers],
        };
        for (var l = 0; l < slab.Layers; l++)
            tally.Absorbed[l] = absorbedIn[l].Total();
        return tally;
    }

    /// <summary>Cosine after scattering by Henyey and Greenstein's law.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<float> Scattered<TKind>(
        SlabTables slab, Vector512<int> layer, Vector512<float> cosine, Vector512<float> turn, Vector512<float> around)
        where TKind : struct, ISlabKind
    {
        var one = Vector512<float>.One;
        var law = slab.Scattering;
        var deflection = HenyeyGreenstein.Deflection(
            Of<TKind>(law.Spread, layer), Of<TKind>(law.Forward, layer), Of<TKind>(law.Square, layer), Of<TKind>(law.Top, layer), Of<TKind>(law.Least, layer), Of<TKind>(law.Twice, layer), turn);
        var sines = Vector512.Sqrt((one - (deflection * deflection)) * (one - (cosine * cosine)));
        return LaneMath.Cosine(Vector512.FusedMultiplyAdd(sines, LaneMath.CosOfPi(around), deflection * cosine));
    }

    /// <summary>A table's entry for each lane's layer; with one layer, its own for all.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<float> Of<TKind>(Vector512<float> table, Vector512<int> layer)
        where TKind : struct, ISlabKind => TKind.Layered ? Vector512.Shuffle(table, layer) : Vector512.Create(table[1]);

    /// <summary>What the loop need not ask of a slab; the compiler leaves it out.</summary>
    private interface ISlabKind
    {
        static abstract bool Layered { get; }
    }

    private readonly struct Plain : ISlabKind
    {
        public static bool Layered => false;
    }

    private readonly struct Layered : ISlabKind
    {
        static bool ISlabKind.Layered => true;
    }
}
