using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Gauging;

namespace Silkwright.Web.Questions;

/// <summary>A nine-point map while it is read, as it stands in an address: every reading typed is in the next address.</summary>
public sealed record MapForm
{
    public const string ReadingField = "reading";

    private const double UmPerMil = 25.4;

    /// <summary>Less than this below the bare mesh is the gauge, not a slip. Common practice. [µm]</summary>
    private const double SlipUm = 3;

    /// <summary>Readings of one screen lie within this factor of each other. Common practice.</summary>
    private const double LikeFactor = 2.5;

    /// <summary>What a screen's reading can be. [µm]</summary>
    private const double LeastReadUm = -10, MostReadUm = InputLimits.MostEomUm + InputLimits.MostFabricUm;

    private static readonly string[] Described = ["screen", "operator", "trough", "emulsion", "count", "thread", "strokes", "on"];

    /// <summary>What was told about the coat, by field.</summary>
    public required IReadOnlyDictionary<string, string> About { get; init; }

    public required bool InMil { get; init; }

    /// <summary>Bare mesh as typed; empty: what is read is emulsion over mesh.</summary>
    public required string Bare { get; init; }

    /// <summary>What the gauge showed, by place, in micrometres.</summary>
    public required IReadOnlyDictionary<int, double> ReadUm { get; init; }

    /// <summary>A place chosen to be read, or read again.</summary>
    public int? Chosen { get; init; }

    public IReadOnlyList<Problem> Problems { get; init; } = [];

    public string Unit => InMil ? "mil" : "um";

    public double? BareUm => ReadBare(new ProblemList());

    public PlaceMap Map => new(ReadUm.ToDictionary(place => place.Key, place => place.Value - (BareUm ?? 0)));

    /// <summary>The place that the next number is for; none where all are read.</summary>
    public int? Next => Chosen ?? Map.Next;

    public static MapForm Of(IQueryCollection query, bool usUnits)
    {
        var faults = new ProblemList();
        if (query["unit"].ToString() is { Length: > 0 } other && other is not ("um" or "mil"))
            faults.Add($"'{NearName.Shown(other)}' is not a unit taken here.", "unit", "Write um or mil.");
        if (query["at"].ToString() is { Length: > 0 } chosen && PlaceOf(chosen) is null)
            faults.Add($"There is no place '{NearName.Shown(chosen)}'.", "at", $"Choose one from 1 to {PlaceMap.Places}.");
        var form = new MapForm
        {
            About = Described.Select(name => KeyValuePair.Create(name, query[name].ToString().Trim())).Where(pair => pair.Value.Length > 0).ToDictionary(),
            InMil = query["unit"].ToString() is { Length: > 0 } unit ? unit == "mil" : usUnits,
            Bare = query["bare"].ToString().Trim(),
            ReadUm = Places(query["p"].ToString(), faults),
            Chosen = PlaceOf(query["at"].ToString()),
        };
        _ = form.ReadBare(faults);
        return faults.IsEmpty ? form.With(query[ReadingField].ToString().Trim()) : form with { Problems = faults.Problems };
    }

    /// <summary>The address of this state, with another place chosen.</summary>
    public string Address(int? at = null) => QueryHelpers.AddQueryString("/gauge", Fields(at).Select(field => KeyValuePair.Create(field.Name, (string?)field.Value)));

    /// <summary>What an address of this state holds.</summary>
    public IEnumerable<(string Name, string Value)> Fields(int? at = null)
    {
        foreach (var (name, value) in About)
            yield return (name, value);
        yield return ("unit", Unit);
        if (Bare.Length > 0)
            yield return ("bare", Bare);
        if (ReadUm.Count > 0)
            yield return ("p", string.Join(',', ReadUm.OrderBy(place => place.Key).Select(place => FormattableString.Invariant($"{place.Key}:{Math.Round(place.Value, 3)}"))));
        if (at is { } place)
            yield return ("at", place.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>The readings as a gauge's file, so that the page and a file are read alike.</summary>
    public string AsFile()
    {
        var about = About.Where(field => field.Key is not "count" and not "thread" and not "on").Select(field => (Header: field.Key, field.Value))
            .Concat(new[] { ("count", "mesh count"), ("thread", "thread (um)"), ("on", "date") }.Where(named => About.ContainsKey(named.Item1)).Select(named => (Header: named.Item2, Value: About[named.Item1]))).ToArray();
        string[] header = [.. about.Select(field => field.Header), "place", .. BareUm is null ? new[] { "eom (um)" } : ["coated (um)", "bare (um)"]];
        return string.Join('\n', new[] { string.Join(',', header) }.Concat(ReadUm.OrderBy(place => place.Key).Select(place =>
            string.Join(',', about.Select(field => $"\"{field.Value.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")
                .Append(place.Key.ToString(CultureInfo.InvariantCulture)).Append(Number(place.Value)).Concat(BareUm is { } bare ? [Number(bare)] : [])))));
    }

    private static string Number(double um) => um.ToString("0.###", CultureInfo.InvariantCulture);

    private MapForm With(string typed)
    {
        if (typed.Length == 0 || Next is not { } place)
            return this;
        var faults = new ProblemList();
        var read = Thickness(typed, $"place {place}", faults);
        if (read is { } there)
            Check(there, place, faults);
        return read is { } um && faults.IsEmpty
            ? this with { ReadUm = new Dictionary<int, double>(ReadUm) { [place] = um }, Chosen = null }
            : this with { Problems = faults.Problems, Chosen = place };
    }

    private void Check(double um, int place, ProblemList faults)
    {
        double[] others = [.. ReadUm.Where(read => read.Key != place).Select(read => read.Value).Order()];
        var where = $"place {place}";
        if (others.Length > 1 && others[others.Length / 2] is > 5 and var middle && !Like(um, middle) && (Like(um * UmPerMil, middle) || Like(um / UmPerMil, middle)))
            faults.Add($"{Show(um)} beside {Show(middle)}: it looks like the other unit.", where, "Switch the gauge, or choose its unit here, and read again.");
        else if (BareUm is { } bare && um < bare - SlipUm)
            faults.Add($"{Show(um)} is thinner than the bare mesh, {Show(bare)}.", where, "Set the gauge to zero, and read again; or mend the bare mesh.");
        else if (um is not (> LeastReadUm and <= MostReadUm))
            faults.Add($"{Show(um)} is no thickness of a screen.", where, "Check the unit, and read again.");
    }

    private static bool Like(double um, double middle) => um > middle / LikeFactor && um < middle * LikeFactor;

    private string Show(double um) => InMil ? FormattableString.Invariant($"{um / UmPerMil:0.##} mil") : FormattableString.Invariant($"{um:0.#} µm");

    /// <summary>A number as a gauge types it, in the chosen unit where it brings none.</summary>
    private double? Thickness(string text, string where, ProblemList faults)
    {
        var plain = text.Contains('.', StringComparison.Ordinal) ? text : text.Replace(',', '.');
        return QuantityText.Read(char.IsDigit(plain[^1]) ? plain + Unit : plain, QuantityKind.Thickness, where, faults);
    }

    private double? ReadBare(ProblemList faults)
    {
        if (Bare.Length == 0 || Thickness(Bare, "bare", faults) is not { } um)
            return null;
        if (um is >= InputLimits.LeastFabricUm and <= InputLimits.MostFabricUm)
            return um;
        faults.Add($"{Show(um)} is no bare mesh.", "bare", $"Give its thickness, {Show(InputLimits.LeastFabricUm)} to {Show(InputLimits.MostFabricUm)}; leave it empty where the gauge shows emulsion over mesh.");
        return null;
    }

    private static int? PlaceOf(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at is >= 1 and <= PlaceMap.Places ? at : null;

    private static Dictionary<int, double> Places(string text, ProblemList faults)
    {
        var places = new Dictionary<int, double>();
        foreach (var part in text.Split(',', StringSplitOptions.RemoveEmptyEntries))
        {
            if (part.Split(':') is [var place, var um] && PlaceOf(place) is { } at && double.TryParse(um, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
                && value is > LeastReadUm and <= MostReadUm)
                places[at] = value;
            else
                faults.AddOnce("Some of the places read can't be understood.", "p", "Write place:µm, as in 1:90.1,2:91.4; or start again.");
        }

        return places;
    }
}
