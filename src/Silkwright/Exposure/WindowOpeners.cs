using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>What would open a window that is shut: each change tried on the model itself.</summary>
internal static class WindowOpeners
{
    /// <summary>A gain below this is no gain. [log exposure]</summary>
    private const double Worthwhile = 0.02;

    /// <summary>A dense film. [UV density]. Common practice.</summary>
    private static readonly FilmDensity DenseFilm = new(4, 0.05);

    /// <param name="exposure">The case without a window.</param>
    /// <param name="learntRoom">What strips added to the model's room. [log exposure]</param>
    internal static IReadOnlyList<string> For(ExposureCase exposure, double learntRoom)
    {
        var now = RoomOf(exposure);
        var changes = Changes(exposure)
            .Select(change => (change.What, Gain: RoomOf(change.To) - now))
            .Where(change => change.Gain > Worthwhile)
            .OrderByDescending(change => change.Gain)
            .Select(change => change.What)
            .ToList();
        changes.Add(WiderLine(exposure, learntRoom));
        return changes;
    }

    private static IEnumerable<(string What, ExposureCase To)> Changes(ExposureCase exposure)
    {
        if (!exposure.Mesh.Dyed)
        {
            yield return (
                "Dyed mesh, which swallows the light that runs sideways.",
                exposure with { Mesh = exposure.Mesh with { Dyed = true } });
        }

        if (!LampGeometry.IsNearPoint(exposure.Lamp.Kind))
        {
            yield return (
                "A lamp near a point, whose light comes straight down.",
                exposure with { Lamp = exposure.Lamp with { Kind = LampKind.MetalHalide, DistanceMm = null } });
        }

        if ((exposure.Film?.DMaxUv ?? CoatOptics.DMaxUv.Value) < DenseFilm.DMaxUv)
            yield return ("A denser film, so that its black does not leak.", exposure with { Film = DenseFilm });
        if (exposure.EomUm.Value > 0)
        {
            var thinner = Math.Max(1, exposure.StencilUm.Value - (exposure.EomUm.Value / 2));
            yield return (
                "A thinner coat: half the emulsion over mesh.",
                exposure with { StencilUm = Estimate.Exact(thinner, Ground.Model) });
        }
    }

    private static string WiderLine(ExposureCase exposure, double learntRoom)
    {
        var inputs = Inputs(exposure);
        var um = Math.Max(0, inputs.FinestHeldUm(inputs.Best, inputs.Wall(inputs.Best) - learntRoom));
        return string.Create(CultureInfo.InvariantCulture, $"Artwork whose finest line is wider than about {um:0} µm.");
    }

    private static double RoomOf(ExposureCase exposure)
    {
        var inputs = Inputs(exposure);
        return inputs.Room(inputs.Best) - inputs.Wall(inputs.Best);
    }

    private static WindowInputs Inputs(ExposureCase exposure) => new(exposure, Estimate.Exact(1, Ground.CommonPractice));
}
