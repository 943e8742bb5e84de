using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>Taking a stencil off the mesh again: minutes, or the mesh.</summary>
internal static class Reclaims
{
    /// <summary>Beside an ordinary stencil: one that comes off easily, one that comes off hard. Guesses, no source. [1]</summary>
    private static readonly Estimate EasyShare = new(0.8, 0.6, 1, Ground.CommonPractice);
    private static readonly Estimate HardShare = new(1.8, 1.2, 2.6, Ground.CommonPractice);

    /// <summary>The stencil stays in the mesh: hardened ones usually do, and emulsions that are told to.</summary>
    public static bool MeshLost(StencilEmulsion emulsion, StencilFinish finish) =>
        finish == StencilFinish.Hardened || Of(emulsion) == Reclaiming.No;

    /// <summary>Hands-on minutes for one screen. [min]</summary>
    public static Estimate Minutes(StencilEmulsion emulsion, StencilFinish finish)
    {
        if (MeshLost(emulsion, finish))
            return Estimate.Exact(0, Ground.Model);
        return Of(emulsion) switch
        {
            Reclaiming.Easy => Times(EasyShare),
            Reclaiming.Hard => Times(HardShare),
            _ => WorkTimes.ReclaimMinutes,
        };

        static Estimate Times(Estimate share) => Propagation.Through(
            x => x[0] * x[1], [new("minutes of reclaiming", WorkTimes.ReclaimMinutes), new("how it comes off", share)], floor: 0).Estimate;
    }

    /// <summary>Of a film and the emulsion it is laid with, the one that comes off worse; easy only where both are.</summary>
    private static Reclaiming? Of(StencilEmulsion emulsion)
    {
        if (emulsion.LaidWith is not { } laying)
            return emulsion.Reclaim;
        Reclaiming?[] parts = [emulsion.Reclaim, laying.Reclaim];
        return parts.Contains(Reclaiming.No) ? Reclaiming.No
            : parts.Contains(Reclaiming.Hard) ? Reclaiming.Hard
            : parts.Contains(null) ? null
            : Reclaiming.Easy;
    }
}
