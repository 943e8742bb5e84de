using System.Globalization;
using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Contracts;

/// <summary>Reads rows of a table of coats. What comes again and again (a mesh, an emulsion, strokes) is made once.</summary>
internal sealed class CoatRowReader(Dictionary<string, int> header, string where, ProblemList problems, bool isReading)
{
    /// <summary>What is out by this much is the gauge; more is a slip. Common practice. [µm]</summary>
    private const double SlipUm = 3;

    private const double LeastEomUm = -10;
    private const int MostPasses = 12;

    /// <summary>Emulsions are named without their family: a liquid of usual density is meant.</summary>
    private const EmulsionFamily AnyLiquid = EmulsionFamily.DualCure;

    private readonly Dictionary<(double, double), WovenMesh?> meshes = [];
    private readonly Dictionary<(string, double?, double?), StencilEmulsion> emulsions = [];
    private readonly Dictionary<string, IReadOnlyList<Stroke>?> strokes = [];
    private readonly Dictionary<(string, double), Trough> troughs = [];

    public CoatRow? Row(SeparatedRow row)
    {
        var fields = new RowFields(row, header, where, problems);
        var shop = Name(fields, "shop");
        if (shop is null)
            fields.Fault("shop", "The shop is missing.", "Name the shop in every row; in a file of one shop, any one word.");
        var emulsion = Emulsion(fields);
        var mesh = Mesh(fields);
        var (laid, counted) = Strokes(row, fields);
        var edge = fields.Number("edgeRadiusMm", CoatDefaults.LeastEdgeMm, CoatDefaults.MostEdgeMm, "Give the radius of the trough's edge in mm: sharp is about 0.5, round about 1.5.");
        var eom = isReading ? Eom(fields) : null;
        var on = fields.Date("measuredOn");
        if (shop is null || emulsion is null || mesh is null || laid is null || (isReading && eom is null))
            return null;
        return new CoatRow(row.Line, new CoatObservation
        {
            Shop = shop,
            Operator = Name(fields, "operator"),
            Trough = TroughOf(Name(fields, "trough") ?? "", edge ?? CoatDefaults.RoundEdgeMm),
            EdgeIsKnown = edge is not null,
            Emulsion = emulsion,
            Mesh = mesh,
            Strokes = laid,
            Screen = Name(fields, "screen"),
        })
        {
            EomUm = eom,
            Point = Name(fields, "point"),
            Repeat = Name(fields, "repeat"),
            MeasuredOn = on,
            StrokesCounted = counted,
            Written = isReading ? string.Join('\u001f', row.Fields) : "",
        };
    }

    private static string? Name(RowFields fields, string column)
    {
        if (fields.Text(column) is not { } text)
            return null;
        if (text.Length <= InputLimits.LongestCatalogueName && !text.Any(UnseenCharacters.Are))
            return text;
        fields.Fault(column, "It is too long, or holds characters that cannot be seen.", $"Write {InputLimits.LongestCatalogueName} plain characters at most.");
        return null;
    }

    private StencilEmulsion? Emulsion(RowFields fields)
    {
        var name = Name(fields, "emulsion");
        if (name is null)
            fields.Fault("emulsion", "The emulsion is missing.", "Name the emulsion that was coated.");
        var solids = fields.Number("solidsPercent", InputLimits.LeastSolidsPercent, 100, "Give the solids by weight in percent, as in 38; a share such as 0.38 is too small.");
        var density = fields.Number("emulsionDensity", 0.8, 2, "Give the liquid's density in g/cm³, as in 1.06.");
        if (name is null)
            return null;
        if (!emulsions.TryGetValue((name, solids, density), out var emulsion))
            emulsions[(name, solids, density)] = emulsion = new StencilEmulsion { Id = name, Family = AnyLiquid, SolidsPercent = solids, DensityGPerCm3 = density };
        return emulsion;
    }

    private WovenMesh? Mesh(RowFields fields)
    {
        var count = Needed("meshCountPerCm", InputLimits.LeastCountPerCm, InputLimits.MostCountPerCm, "Give threads per centimetre: a count per inch divided by 2.54.");
        var thread = Needed("threadUm", InputLimits.LeastThreadUm, InputLimits.MostThreadUm, "Give the thread's diameter in µm.");
        if (count is not { } perCm || thread is not { } um)
            return null;
        if (!meshes.TryGetValue((perCm, um), out var mesh))
            meshes[(perCm, um)] = mesh = perCm * um < 10_000 ? WovenMesh.Of(new MeshFabric(perCm, um)) : null;
        if (mesh is null)
            fields.Fault("meshCountPerCm", string.Create(CultureInfo.InvariantCulture, $"Threads of {um} µm would overlap at {perCm} a centimetre."), "Give threads per centimetre, not per inch, and the thread's diameter in µm; see that the two are not swapped.");
        return mesh;

        double? Needed(string column, double least, double most, string remedy)
        {
            if (fields.Text(column) is null)
                fields.Fault(column, $"{column} is missing.", remedy);
            return fields.Number(column, least, most, remedy);
        }
    }

    private (IReadOnlyList<Stroke>? Strokes, bool Counted) Strokes(SeparatedRow row, RowFields fields)
    {
        if (fields.Text("strokes") is { } text)
        {
            var place = SeparatedText.Place(where, row.Line, fields.ColumnOf("strokes"));
            if (!strokes.TryGetValue(text, out var written))
                strokes[text] = written = StrokeText.TryRead(text, place, problems) is { } read && Sensible(read) ? read : null;
            if (written is null)
                fields.Fault("strokes", "These strokes make no coat.", "The first stroke lays emulsion on bare mesh: P or S, as in P P S or P S | P.");
            return (written, false);
        }

        var (print, squeegee) = (Passes("printPasses"), Passes("squeegeePasses"));
        if (print is null || squeegee is null)
            return (null, true);
        if (print + squeegee == 0)
        {
            fields.Fault("printPasses", "There is no stroke.", "Count the strokes on the print side and on the squeegee side.");
            return (null, true);
        }

        var key = string.Create(CultureInfo.InvariantCulture, $"{print}+{squeegee}");
        if (!strokes.TryGetValue(key, out var counted))
            strokes[key] = counted = [.. Enumerable.Repeat(new Stroke(StrokeSide.Print), print.Value), .. Enumerable.Repeat(new Stroke(StrokeSide.Squeegee), squeegee.Value)];
        return (counted, true);

        int? Passes(string column)
        {
            const string remedy = "Count the strokes on that side, 0 where there was none.";
            if (fields.Text(column) is null)
                fields.Fault(column, $"{column} is missing.", remedy);
            if (fields.Number(column, 0, MostPasses, remedy) is not { } number)
                return null;
            if (number == Math.Floor(number))
                return (int)number;
            fields.Fault(column, "Strokes are a whole number.", remedy);
            return null;
        }
    }

    private static bool Sensible(IReadOnlyList<Stroke> strokes) => strokes is [{ Scrape: false, AfterDrying: false }, ..];

    private Trough TroughOf(string name, double edgeMm)
    {
        if (!troughs.TryGetValue((name, edgeMm), out var trough))
            troughs[(name, edgeMm)] = trough = new Trough(name, edgeMm);
        return trough;
    }

    /// <summary>What was read over the mesh, or coated less bare. [µm]</summary>
    private static double? Eom(RowFields fields)
    {
        var eom = fields.Number("eomUm", LeastEomUm, InputLimits.MostEomUm, "Give the emulsion over mesh in µm: the coated thickness less the bare mesh.");
        var mesh = fields.Number("meshUm", InputLimits.LeastFabricUm, InputLimits.MostFabricUm, "Give the bare mesh's thickness in µm.");
        var total = fields.Number("totalUm", InputLimits.LeastFabricUm, InputLimits.MostFabricUm + InputLimits.MostEomUm, "Give the coated thickness in µm, mesh and emulsion together.");
        if (total < mesh - SlipUm)
        {
            fields.Fault("totalUm", string.Create(CultureInfo.InvariantCulture, $"{total} µm coated is thinner than the bare mesh, {mesh} µm."), "See that the two are of one screen and not swapped, set the gauge to zero, and read it again.");
            return null;
        }

        if (eom is null && fields.Text("eomUm") is null && (total is null || mesh is null))
            fields.Fault("eomUm", "The reading is missing.", "Give eomUm, or totalUm and meshUm.");
        if (eom < -SlipUm)
        {
            fields.Fault("eomUm", string.Create(CultureInfo.InvariantCulture, $"{eom} µm over the mesh is below the bare mesh."), "Set the gauge to zero on the bare mesh, and read it again.");
            return null;
        }

        return eom ?? (total - mesh);
    }
}
