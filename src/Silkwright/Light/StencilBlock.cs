using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Silkwright.Light;

/// <summary>Follows a batch of photons through film, gap, coat and threads to the backing, sixteen side by side; a lane whose photon has ended takes the next one.</summary>
/// <remarks>
/// Places across the threads count from the middle of the weave's field that the photon is in: from thread to thread half the way to each side. One step of the loop carries every
/// photon to what it meets next: an interaction, a flat surface, a thread's surface or the next field. docs/engines/light.md, equations 1 to 10.
/// </remarks>
internal static class StencilBlock
{
    /// <summary>Lanes that wait before new photons are begun.</summary>
    private const int LanesToBegin = 3;

    /// <summary>A photon weaker than this ends by lot, ...</summary>
    private const float Weak = 0.04f;

    /// <summary>... or goes on with this many times its weight, once in as many.</summary>
    private const float Stronger = 5;

    /// <summary>Steps between two looks at whether to stop.</summary>
    private const int StepsToAsk = 4096;

    /// <summary>Nearer to level than this no direction is reckoned with.</summary>
    private const float Level = 1e-7f;

    /// <summary>Where the loop runs fastest: the best of the four there are, by ./bench light. <see cref="StackPlace"/></summary>
    private const int Place = 16;

    /// <param name="t">The stencil.</param>
    /// <param name="keys">Four words made of the seed and the batch's number.</param>
    /// <param name="photons">How many.</param>
    /// <param name="cancel">Stops the work.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static StencilTally Follow(StencilTables t, ReadOnlySpan<uint> keys, int photons, CancellationToken cancel)
    {
        Span<byte> mark = stackalloc byte[StackPlace.Line];
        return Follow(t, keys, photons, StackPlace.FromLine(stackalloc byte[StencilTelling.Room + StackPlace.Line + StackPlace.BytesTo(mark, Place)]), cancel);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static StencilTally Follow(StencilTables t, ReadOnlySpan<uint> keys, int photons, Span<byte> room, CancellationToken cancel)
    {
        var (zero, one, half) = (Vector512<float>.Zero, Vector512<float>.One, Vector512.Create(0.5f));
        var tally = new StencilTally { Photons = photons };
        var told = new StencilTelling(t, tally, room);
        var launch = new StencilLaunch(t, keys);
        var random = default(LaneRandom);
        var (u, v, z, x) = (zero, zero, zero, zero);
        var (du, dv, dz) = (zero, zero, one);
        var (weight, path, alive) = (zero, zero, zero);
        var (inWarp, inWeft, side) = (zero, zero, one);
        var layer = Vector512<int>.Zero;
        LaneSum back = default, backing = default, coat = default, threads = default, roulette = default;
        var (halfPitch, radius, perRadius) = (Vector512.Create(t.Pitch / 2), Vector512.Create(t.Radius), Vector512.Create(t.Radius > 0 ? 1 / t.Radius : 0));
        var begun = 0;
        var sinceAsked = 0;
        while (true)
        {
            if (++sinceAsked == StepsToAsk)
            {
                cancel.ThrowIfCancellationRequested();
                sinceAsked = 0;
            }

            var fresh = zero;
            var waiting = (uint)Vector512.ExtractMostSignificantBits(~alive) & 0xFFFF;
            if (begun < photons && BitOperations.PopCount(waiting) >= LanesToBegin)
            {
                while (BitOperations.PopCount(waiting) > photons - begun)
                    waiting &= waiting - 1;
                var begin = launch.Begin(waiting, (uint)begun);
                begun += BitOperations.PopCount(waiting);
                random.Begin(begin.Chosen, begin.Counts, keys);
                fresh = begin.Chosen.AsSingle();
                alive |= fresh;
                u = Vector512.ConditionalSelect(fresh, begin.U, u);
                v = Vector512.ConditionalSelect(fresh, begin.V, v);
                side = Vector512.ConditionalSelect(fresh, begin.Side, side);
                du = Vector512.ConditionalSelect(fresh, begin.DU, du);
                dv = Vector512.ConditionalSelect(fresh, begin.DV, dv);
                dz = Vector512.ConditionalSelect(fresh, begin.DZ, dz);
                z = Vector512.ConditionalSelect(fresh, Vector512.Create(t.ImageZ), z);
                x = Vector512.ConditionalSelect(fresh, zero, x);
                weight = Vector512.ConditionalSelect(fresh, one, weight);
                inWarp = Vector512.AndNot(inWarp, fresh);
                inWeft = Vector512.AndNot(inWeft, fresh);
                layer = Vector512.AndNot(layer, fresh.AsInt32());
            }
            else if (waiting == 0xFFFF)
            {
                break;
            }

            // What each photon is in, and how far it is to whatever it meets first.
            var inCoat = Vector512.Equals(layer, Vector512.Create(t.Coat)).AsSingle();
            var inThread = (inWarp | inWeft) & inCoat;
            var medium = Vector512.ConditionalSelect(inThread.AsInt32(), Vector512.Create(t.Thread), layer);
            var extinction = Vector512.Shuffle(t.Extinction, medium);
            var spent = Vector512.LessThanOrEqual(path, zero) | fresh;
            path = Vector512.ConditionalSelect(spent, Vector512.Max(-LaneMath.Log(one - random.Next()), Vector512.Create(float.Epsilon)), path);
            var toInteraction = path / extinction;
            var down = Vector512.GreaterThan(dz, zero);
            var ahead = Vector512.ConditionalSelect(down, Vector512.Shuffle(t.Bottom, layer) - z, z - Vector512.Shuffle(t.Top, layer));
            // A photon that was thrown back into the film has nothing above it.
            var toFlat = Vector512.Max(ahead, zero) / Vector512.Max(Vector512.Abs(dz), Vector512.Create(Level));
            var (toWarp, toWeft, toFieldU, toFieldV) = (LaneWeave.Never, LaneWeave.Never, LaneWeave.Never, LaneWeave.Never);
            var (heightOfWarp, heightOfWeft) = (zero, zero);
            if (t.HasThreads)
            {
                heightOfWarp = z - Vector512.FusedMultiplyAdd(side, Vector512.Create(-t.Height), Vector512.Create(t.Middle));
                heightOfWeft = z - Vector512.FusedMultiplyAdd(side, Vector512.Create(t.Height), Vector512.Create(t.Middle));
                toWarp = Vector512.ConditionalSelect(inCoat, LaneWeave.ToThread(u, heightOfWarp, du, dz, radius, inWarp), LaneWeave.Never);
                toWeft = Vector512.ConditionalSelect(inCoat, LaneWeave.ToThread(v, heightOfWeft, dv, dz, radius, inWeft), LaneWeave.Never);
                toFieldU = Vector512.ConditionalSelect(inCoat, LaneWeave.ToField(u, du, halfPitch), LaneWeave.Never);
                toFieldV = Vector512.ConditionalSelect(inCoat, LaneWeave.ToField(v, dv, halfPitch), LaneWeave.Never);
            }

            var far = Vector512.Min(Vector512.Min(Vector512.Min(toInteraction, toFlat), Vector512.Min(toWarp, toWeft)), Vector512.Min(toFieldU, toFieldV));
            var interacts = alive & Vector512.LessThanOrEqual(toInteraction, far);
            var left = Vector512.AndNot(alive, interacts);
            var flat = left & Vector512.LessThanOrEqual(toFlat, far);
            left = Vector512.AndNot(left, flat);
            var meetsWarp = left & Vector512.LessThanOrEqual(toWarp, far);
            left = Vector512.AndNot(left, meetsWarp);
            var meetsWeft = left & Vector512.LessThanOrEqual(toWeft, far);
            left = Vector512.AndNot(left, meetsWeft);
            var leavesU = left & Vector512.LessThanOrEqual(toFieldU, far);
            var leavesV = Vector512.AndNot(left, leavesU);

            // The dose is the weighted path in the coat, told at places set evenly on it from a beginning drawn by lot.
            var dx = (du * Vector512.Create(t.CosineOfAngle)) - (dv * Vector512.Create(t.SineOfAngle));
            var tells = Vector512.AndNot(inCoat & alive, inThread);
            if (tells != zero)
            {
                told.Tell((uint)Vector512.ExtractMostSignificantBits(tells), far, weight, random.Next(), (u, v, z, x), (du, dv, dz, dx));
            }

            // Onwards.
            far = Vector512.ConditionalSelect(alive, far, zero);
            x = Vector512.FusedMultiplyAdd(far, dx, x);
            u = Vector512.FusedMultiplyAdd(far, du, u);
            v = Vector512.FusedMultiplyAdd(far, dv, v);
            z = Vector512.FusedMultiplyAdd(far, dz, z);
            path = Vector512.ConditionalSelect(interacts, zero, Vector512.Max(path - (far * extinction), Vector512.Create(float.Epsilon)));

            // An interaction: a part is absorbed, the rest scattered.
            if (interacts != zero)
            {
                var kept = weight * Vector512.Shuffle(t.Albedo, medium);
                var inThreads = interacts & inThread;
                var inside = Vector512.AndNot(interacts, inThread);
                threads.AddLoss(weight & inThreads, kept & inThreads);
                coat.AddLoss(weight & inside, kept & inside);
                weight = Vector512.ConditionalSelect(interacts, kept, weight);
                var law = t.Scattering;
                var deflection = HenyeyGreenstein.Deflection(
                    Vector512.Shuffle(law.Spread, medium), Vector512.Shuffle(law.Forward, medium), Vector512.Shuffle(law.Square, medium),
                    Vector512.Shuffle(law.Top, medium), Vector512.Shuffle(law.Least, medium), Vector512.Shuffle(law.Twice, medium), random.Next());
                var (nu, nv, nz) = LaneDirection.Turned(du, dv, dz, deflection, random.Next());
                du = Vector512.ConditionalSelect(interacts, nu, du);
                dv = Vector512.ConditionalSelect(interacts, nv, dv);
                dz = Vector512.ConditionalSelect(interacts, nz, dz);
            }

            // A surface, flat or round: thrown back or refracted by lot.
            var meets = flat | meetsWarp | meetsWeft;
            if (meets != zero)
            {
                var next = layer + Vector512.ConditionalSelect(down.AsInt32(), Vector512<int>.One, Vector512<int>.AllBitsSet);
                var (warpAfter, weftAfter) = (inWarp ^ meetsWarp, inWeft ^ meetsWeft);
                var roundAfter = Vector512.ConditionalSelect((warpAfter | weftAfter).AsInt32(), Vector512.Create(t.Thread), Vector512.Create(t.Coat));
                var mediumAfter = Vector512.ConditionalSelect(flat.AsInt32(), Vector512.Max(next, Vector512<int>.Zero), roundAfter);
                var (fromIndex, toIndex) = (Vector512.Shuffle(t.Index, medium), Vector512.Shuffle(t.Index, mediumAfter));
                var normalU = (u * perRadius) & meetsWarp;
                var normalV = (v * perRadius) & meetsWeft;
                var warpZ = heightOfWarp + (far * dz);
                var weftZ = heightOfWeft + (far * dz);
                var normalZ = Vector512.ConditionalSelect(flat, one, Vector512.ConditionalSelect(meetsWarp, warpZ, weftZ) * perRadius);
                var onNormal = (du * normalU) + (dv * normalV) + (dz * normalZ);
                var sign = Vector512.ConditionalSelect(Vector512.GreaterThanOrEqual(onNormal, zero), one, -one);
                var cosine = Vector512.Min(Vector512.Abs(onNormal), one);
                var (thrownBack, behind) = Fresnel.Of(fromIndex, toIndex, cosine);
                var same = Vector512.Equals(fromIndex, toIndex);
                var isBack = meets & Vector512.AndNot(Vector512.LessThan(random.Next(), thrownBack), same);
                var passes = Vector512.AndNot(meets, isBack);
                var bends = Vector512.AndNot(passes, same);
                var ratio = Vector512.ConditionalSelect(bends, fromIndex / toIndex, one);
                var along = Vector512.ConditionalSelect(bends, behind - (ratio * cosine), Vector512.ConditionalSelect(isBack, cosine * Vector512.Create(-2f), zero)) * sign;
                du = Vector512.FusedMultiplyAdd(along, normalU, ratio * du);
                dv = Vector512.FusedMultiplyAdd(along, normalV, ratio * dv);
                dz = Vector512.FusedMultiplyAdd(along, normalZ, ratio * dz);
                inWarp = Vector512.ConditionalSelect(passes, warpAfter, inWarp);
                inWeft = Vector512.ConditionalSelect(passes, weftAfter, inWeft);

                // A flat surface is a place to the last bit; the coat is entered in the field that lies there.
                var flatPasses = flat & passes;
                z = Vector512.ConditionalSelect(flat, Vector512.ConditionalSelect(down, Vector512.Shuffle(t.Bottom, layer), Vector512.Shuffle(t.Top, layer)), z);
                layer = Vector512.ConditionalSelect(flatPasses.AsInt32(), next, layer);
                var enters = flatPasses & Vector512.Equals(layer, Vector512.Create(t.Coat)).AsSingle();
                if (t.HasThreads && enters != zero)
                {
                    var (fieldU, fieldV) = (LaneWeave.FieldOf(u, t.Pitch), LaneWeave.FieldOf(v, t.Pitch));
                    u = Vector512.ConditionalSelect(enters, Vector512.FusedMultiplyAdd(fieldU, Vector512.Create(-t.Pitch), u), u);
                    v = Vector512.ConditionalSelect(enters, Vector512.FusedMultiplyAdd(fieldV, Vector512.Create(-t.Pitch), v), v);
                    var fields = fieldU + fieldV;
                    var odd = enters & Vector512.GreaterThan(fields - (Vector512.Floor(fields * half) * Vector512.Create(2f)), half);
                    side = Vector512.ConditionalSelect(odd, -side, side);
                    (inWarp, inWeft) = (Vector512.AndNot(inWarp, enters), Vector512.AndNot(inWeft, enters));
                }

                // Gone back through the film's image.
                var leaves = alive & Vector512.LessThanOrEqual(layer, Vector512<int>.Zero).AsSingle() & Vector512.LessThan(dz, zero);
                back.Add(weight & leaves);
                alive = Vector512.AndNot(alive, leaves);

                // At the backing a part is swallowed, the rest thrown back alike into all directions.
                var arrives = flatPasses & Vector512.Equals(layer, Vector512.Create(t.Backing)).AsSingle();
                if (arrives != zero)
                {
                    var kept = weight * Vector512.Create(t.BackingReflectance);
                    backing.AddLoss(weight & arrives, kept & arrives);
                    weight = Vector512.ConditionalSelect(arrives, kept, weight);
                    layer = Vector512.ConditionalSelect(arrives.AsInt32(), Vector512.Create(t.Backing - 1), layer);
                    var sine = Vector512.Sqrt(random.Next());
                    var (around, aside) = LaneDirection.Around(random.Next());
                    du = Vector512.ConditionalSelect(arrives, sine * around, du);
                    dv = Vector512.ConditionalSelect(arrives, sine * aside, dv);
                    dz = Vector512.ConditionalSelect(arrives, -Vector512.Sqrt(one - (sine * sine)), dz);
                    interacts |= arrives;
                }
            }

            var weak = alive & interacts & Vector512.LessThan(weight, Vector512.Create(Weak));
            if (weak != zero)
            {
                var goesOn = Vector512.LessThan(random.Next() * Stronger, one) & Vector512.GreaterThan(weight, zero);
                var after = Vector512.ConditionalSelect(weak, (weight * Stronger) & goesOn, weight);
                roulette.AddLoss(weight & weak, after & weak);
                weight = after;
                alive = Vector512.AndNot(alive, Vector512.AndNot(weak, goesOn));
            }

            // Into the next field: warp and weft change places there.
            var crosses = leavesU | leavesV;
            if (crosses != zero)
            {
                u = Vector512.ConditionalSelect(leavesU, Vector512.ConditionalSelect(Vector512.GreaterThan(du, zero), -halfPitch, halfPitch), u);
                v = Vector512.ConditionalSelect(leavesV, Vector512.ConditionalSelect(Vector512.GreaterThan(dv, zero), -halfPitch, halfPitch), v);
                side = Vector512.ConditionalSelect(crosses, -side, side);
                inWarp = Vector512.ConditionalSelect(crosses, LaneWeave.Within(u, z - Vector512.FusedMultiplyAdd(side, Vector512.Create(-t.Height), Vector512.Create(t.Middle)), radius), inWarp);
                inWeft = Vector512.ConditionalSelect(crosses, LaneWeave.Within(v, z - Vector512.FusedMultiplyAdd(side, Vector512.Create(t.Height), Vector512.Create(t.Middle)), radius), inWeft);
            }
        }

        (tally.Back, tally.Backing, tally.Coat, tally.Threads, tally.Roulette) = (back.Total(), backing.Total(), coat.Total(), threads.Total(), roulette.Total());
        return tally;
    }
}
