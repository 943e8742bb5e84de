using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Coating;

/// <summary>A capillary film drawn into wet mesh: its thickness less what the openings swallow.</summary>
/// <remarks>docs/engines/coating.md, equation 9; the swallowed share is a guess until the shop reads its own.</remarks>
internal static class CapillaryCoat
{
    public static CoatPrediction Predict(WovenMesh mesh, StencilEmulsion emulsion)
    {
        var film = FamilyValues.FilmThicknessUm(emulsion);
        var eom = Propagation.Through(
            x => x[0] - (x[1] * x[2]) + x[3],
            [
                new("thickness of the film", film),
                new("share of the mesh that swallows film", CoatDefaults.SwallowedShare),
                new("voids of the mesh", mesh.VoidUm),
                new("reading of the gauge", CoatDefaults.GaugeErrorUm),
            ],
            floor: 0);
        var notes = new List<Note>
        {
            new("A capillary film is laid on wet mesh, not stroked; its bought thickness sets the stencil.", Ground.CommonPractice),
        };
        if (emulsion.FilmThicknessUm is null)
            notes.Add(new Note($"The thickness of {emulsion.Id} is not given: a film of the general class, 25 to 40 µm, is taken.", Ground.CommonPractice));

        return new CoatPrediction
        {
            Strokes = [],
            EomUm = eom.Estimate,
            StencilUm = Propagation.Through(
                x => x[0] + x[1],
                [new("mesh", mesh.FabricThicknessUm), new("emulsion over mesh", eom.Estimate)]).Estimate,
            WetUm = film,
            GramsPerM2 = Propagation.Through(
                x => x[0] * x[1],
                [new("thickness of the film", film), new("density of the dry coat", VolumeSolids.DryDensityGPerCm3)]).Estimate,
            Drivers = eom.Drivers,
            Notes = notes,
        };
    }
}
