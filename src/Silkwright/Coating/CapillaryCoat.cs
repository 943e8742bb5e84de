using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Coating;

/// <summary>A capillary film drawn into wet mesh, or into mesh filled with liquid emulsion: its thickness less what the openings swallow.</summary>
/// <remarks>docs/engines/coating.md, equations 9 to 12; the shares are guesses until the shop reads its own.</remarks>
internal static class CapillaryCoat
{
    /// <summary>With an emulsion one stroke on the squeegee side fills the mesh behind the film.</summary>
    private static readonly Stroke[] LayingStroke = [new(StrokeSide.Squeegee)];

    public static CoatPrediction Predict(WovenMesh mesh, StencilEmulsion emulsion)
    {
        var inputs = Inputs(mesh, emulsion);
        var withEmulsion = emulsion.LaidWith is not null;
        var eom = Propagation.Through(x => Layers.Of(x, withEmulsion).EomUm + x[3], inputs, floor: 0);
        return new CoatPrediction
        {
            Strokes = withEmulsion ? LayingStroke : [],
            EomUm = eom.Estimate,
            StencilUm = Propagation.Through(
                x => x[0] + x[1],
                [new("mesh", mesh.FabricThicknessUm), new("emulsion over mesh", eom.Estimate)]).Estimate,
            WetUm = Propagation.Through(x => Layers.Of(x, withEmulsion).WetUm, inputs, floor: 0).Estimate,
            SolidsPercent = Propagation.Through(x => Layers.Of(x, withEmulsion).SolidsPercent, inputs, floor: 0)
                .Estimate.Map(percent => Math.Min(percent, 100)),
            GramsPerM2 = Propagation.Through(x => Layers.Of(x, withEmulsion).LiquidGramsPerM2 ?? (x[0] * x[4]), inputs, floor: 0).Estimate,
            Drivers = eom.Drivers,
            Notes = [.. NotesOn(emulsion)],
        };
    }

    private static Uncertain[] Inputs(WovenMesh mesh, StencilEmulsion emulsion) =>
    [
        new("thickness of the film", FamilyValues.FilmThicknessUm(emulsion)),
        new("share of the mesh that swallows film", CoatDefaults.SwallowedShare),
        new("voids of the mesh", mesh.VoidUm),
        new("reading of the gauge", CoatDefaults.GaugeErrorUm),
        new("density of the dry coat", VolumeSolids.DryDensityGPerCm3),
        .. emulsion.LaidWith is { } laying
            ? new Uncertain[]
            {
                new("solids of the laying emulsion", FamilyValues.SolidsPercent(laying)),
                new("film left on the squeegee side", CoatDefaults.SqueegeeFilm),
                new("heel of the trough", CoatDefaults.HeelLoss),
            }
            : [new("water left in the mesh", CoatDefaults.WaterLeftShare)],
    ];

    private static IEnumerable<Note> NotesOn(StencilEmulsion emulsion)
    {
        yield return emulsion.LaidWith is { } laying
            ? new Note(
                $"The film is laid on the print side and drawn in with one stroke of {laying.Id} from the squeegee side; its bought thickness sets the stencil. How the film sinks is a guess, no source: read it with a gauge.",
                Ground.CommonPractice)
            : new Note("A capillary film is laid on wet mesh, not stroked; its bought thickness sets the stencil.", Ground.CommonPractice);
        if (emulsion.FilmThicknessUm is null)
            yield return new Note($"The thickness of {emulsion.Id} is not given: a film of the general class, 25 to 40 µm, is taken.", Ground.CommonPractice);
    }

    /// <summary>Layers for one set of the inputs, in their order.</summary>
    /// <param name="EomUm">Film that stays over the threads.</param>
    /// <param name="WetUm">Film and all that is wet behind it.</param>
    /// <param name="SolidsPercent">Solids by weight of both together.</param>
    /// <param name="LiquidGramsPerM2">Laying emulsion used; none with water.</param>
    private readonly record struct Layers(double EomUm, double WetUm, double SolidsPercent, double? LiquidGramsPerM2)
    {
        public static Layers Of(IReadOnlyList<double> x, bool withEmulsion)
        {
            var (film, swallowed, voids, dryDensity) = (x[0], x[1], x[2], x[4]);
            return withEmulsion ? Filled(film, swallowed, voids, dryDensity, x[5], x[6], x[7]) : Wetted(film, swallowed, voids, dryDensity, x[5]);
        }

        private static Layers Wetted(double film, double swallowed, double voids, double dryDensity, double waterShare)
        {
            var water = waterShare * voids;
            return new Layers(
                Math.Max(0, film - (swallowed * voids)), film + water, Percent(film * dryDensity, water * VolumeSolids.WaterDensityGPerCm3), null);
        }

        /// <summary>The film sinks only into what the drying emulsion leaves open.</summary>
        private static Layers Filled(
            double film, double swallowed, double voids, double dryDensity, double solidsPercent, double squeegeeShare, double heelLoss)
        {
            var stays = VolumeSolids.Share(solidsPercent, dryDensity);
            var liquid = voids * (1 + squeegeeShare);
            var grams = liquid * VolumeSolids.LiquidDensityGPerCm3(solidsPercent, dryDensity);
            var solids = grams * solidsPercent / 100;
            return new Layers(
                Math.Max(0, film - (swallowed * voids * (1 - stays))),
                film + liquid,
                Percent((film * dryDensity) + solids, grams - solids),
                grams * (1 + heelLoss));
        }

        private static double Percent(double solids, double water) => 100 * solids / (solids + water);
    }
}
