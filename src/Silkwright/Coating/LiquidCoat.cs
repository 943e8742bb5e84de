using System.Collections.Immutable;
using System.Globalization;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Coating;

/// <summary>The balance of volumes for emulsion laid with a scoop coater: docs/engines/coating.md, equations 1 to 6.</summary>
internal static class LiquidCoat
{
    /// <summary>Below this the print side follows the threads. [µm] Common practice: the least an even stencil has.</summary>
    private const double BareUm = 1;

    /// <summary>The first of the inputs: physical constants that are the same in every shop.</summary>
    internal const int SharedConstants = 5;

    /// <summary>What those are, in words.</summary>
    internal static readonly ImmutableArray<string> SharedNames =
        ["film laid by a stroke", "film left on the squeegee side", "sinking into the mesh", "edge of the trough", "film of a face coat"];

    /// <summary>Inputs that readings teach of: the constants, then voids, solids and density.</summary>
    private const int LastLearnt = 8;

    /// <summary>However readings draw a constant, this share of it stays: none of them changes its sign. [1]</summary>
    private const double LeastConstant = 0.1;

    public static CoatPrediction Predict(WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IReadOnlyList<Stroke> strokes)
    {
        var inputs = Inputs(mesh, emulsion, trough);
        var tally = StrokeTally.Of(strokes);
        var eom = Propagation.Through(x => Layers.Of(x, tally, trough).EomUm + x[9], inputs, floor: 0);
        return new CoatPrediction
        {
            Strokes = strokes,
            EomUm = eom.Estimate,
            StencilUm = Propagation.Through(
                x => x[0] + x[1],
                [new("mesh", mesh.FabricThicknessUm), new("emulsion over mesh", eom.Estimate)]).Estimate,
            WetUm = Propagation.Through(x => Layers.Of(x, tally, trough).WetUm, inputs, floor: 0).Estimate,
            SolidsPercent = FamilyValues.SolidsPercent(emulsion),
            GramsPerM2 = Propagation.Through(
                x => Layers.Of(x, tally, trough).WetUm * VolumeSolids.LiquidDensityGPerCm3(x[6], x[7]) * (1 + x[10]), inputs, floor: 0).Estimate,
            Drivers = eom.Drivers,
            Notes = NotesOn(emulsion, FamilyValues.SolidsPercent(emulsion), eom.Estimate.Value),
        };
    }

    /// <summary>The best value of <see cref="CoatPrediction.EomUm"/> for several strokes, without the intervals that cost time. [µm]</summary>
    public static IReadOnlyList<double> BestEomUm(
        WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IEnumerable<IReadOnlyList<Stroke>> strokes)
    {
        var best = Inputs(mesh, emulsion, trough).Select(input => input.Estimate.Value).ToArray();
        return [.. strokes.Select(one => Layers.Of(best, StrokeTally.Of(one), trough).EomUm)];
    }

    /// <summary>What the balance expects of the emulsion over mesh, and how far it moves with what the balance rests on.</summary>
    /// <remarks>Moves are those of a coat that may sink below its mesh: where the floor cuts in they would tell of the floor alone.</remarks>
    public static CoatSlopes Slopes(WovenMesh mesh, StencilEmulsion emulsion, Trough trough, IReadOnlyList<Stroke> strokes)
    {
        var inputs = Inputs(mesh, emulsion, trough);
        var tally = StrokeTally.Of(strokes);
        var best = inputs.Select(input => input.Estimate.Value).ToArray();
        var value = Layers.Of(best, tally, trough).EomUm;
        var at = best.ToArray();
        double[] moves = [.. Enumerable.Range(0, LastLearnt).Select(Move)];
        return new CoatSlopes(value, moves[..SharedConstants], Math.Max(0, moves[5]), Math.Sqrt((moves[6] * moves[6]) + (moves[7] * moves[7])))
        {
            WithConstants = deviations =>
            {
                double[] moved = [.. best.Select((input, i) => i < deviations.Count ? Math.Max(input * LeastConstant, input + (deviations[i] * Deviation(i))) : input)];
                return Layers.Of(moved, tally, trough).EomUm;
            },
        };

        double Deviation(int input) => (inputs[input].Estimate.High - inputs[input].Estimate.Low) / (2 * Estimate.UsualHalfWidth);

        double Move(int input)
        {
            at[input] = inputs[input].Estimate.High;
            var high = Layers.Of(at, tally, trough).UnflooredUm;
            at[input] = inputs[input].Estimate.Low;
            var low = Layers.Of(at, tally, trough).UnflooredUm;
            at[input] = best[input];
            return (high - low) / (2 * Estimate.UsualHalfWidth);
        }
    }

    private static Uncertain[] Inputs(WovenMesh mesh, StencilEmulsion emulsion, Trough trough)
    {
        if (!(trough.EdgeRadiusMm >= CoatDefaults.LeastEdgeMm && trough.EdgeRadiusMm <= CoatDefaults.MostEdgeMm))
        {
            throw new ArgumentOutOfRangeException(
                nameof(trough), trough.EdgeRadiusMm, $"The edge radius lies between {CoatDefaults.LeastEdgeMm} and {CoatDefaults.MostEdgeMm} mm.");
        }

        return
        [
            new(SharedNames[0], CoatDefaults.FilmPerStroke),
            new(SharedNames[1], CoatDefaults.SqueegeeFilm),
            new(SharedNames[2], CoatDefaults.SinkShare),
            new(SharedNames[3], CoatDefaults.EdgePower),
            new(SharedNames[4], CoatDefaults.FaceFilmUm),
            new("voids of the mesh", mesh.VoidUm),
            new("solids of the emulsion", FamilyValues.SolidsPercent(emulsion)),
            new("density of the dry coat", FamilyValues.DryDensityGPerCm3(emulsion)),
            new("hand of the operator", CoatDefaults.Operator),
            new("reading of the gauge", CoatDefaults.GaugeErrorUm),
            new("heel of the trough", CoatDefaults.HeelLoss),
        ];
    }

    private static List<Note> NotesOn(StencilEmulsion emulsion, Estimate solids, double eomUm)
    {
        var notes = new List<Note>
        {
            new("Strokes are a starting point: pressure, speed and the trough's edge move the thickness. Read it with a gauge.", Ground.CommonPractice),
        };
        if (emulsion.SolidsPercent is null)
        {
            notes.Add(new Note(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The solids of {emulsion.Id} are not given: {solids.Value:0} % by weight, as its family usually has ({solids.Low:0} to {solids.High:0} %)."),
                solids.Ground));
        }

        if (eomUm < BareUm)
            notes.Add(new Note("The coat shrinks into the mesh: the threads stand out of it, and edges will saw-tooth. More strokes, a rounder edge or more solids."));
        return notes;
    }

    /// <summary>Wet and dry layers for one set of the inputs, in their order.</summary>
    private readonly record struct Layers(double WetUm, double EomUm, double UnflooredUm)
    {
        public static Layers Of(IReadOnlyList<double> x, StrokeTally tally, Trough trough)
        {
            var (filmShare, squeegeeShare, sink, edgePower, face, voids) = (x[0], x[1], x[2], x[3], x[4], x[5]);
            var stays = VolumeSolids.Share(x[6], x[7]);
            var hand = x[8];
            var edge = Math.Pow(trough.EdgeRadiusMm / CoatDefaults.RoundEdgeMm, edgePower);
            var faceEdge = Math.Pow(trough.EdgeRadiusMm / CoatDefaults.FaceFilmEdgeMm, edgePower);

            var standing = tally.PrintFilms * filmShare * edge * voids;
            var behind = tally.SqueegeeFilms * squeegeeShare * edge * voids;
            var hollow = Math.Max(0, voids - (stays * (voids + behind)));
            var faceWet = tally.FaceFilms * face * faceEdge;
            var backWet = tally.BackFilms * face * faceEdge;

            // A coat whose sinking exceeds its height has the threads stand out: no emulsion over the mesh, not less than none.
            var firstCoat = (stays * standing) - (sink * hollow);
            return new Layers(
                voids + (hand * (standing + behind + faceWet + backWet)),
                hand * (Math.Max(0, firstCoat) + (stays * faceWet)),
                hand * (firstCoat + (stays * faceWet)));
        }
    }
}
