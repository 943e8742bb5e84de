using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Gauging;

namespace Silkwright.Contracts;

/// <summary>A row of a gauge's file while it is looked at.</summary>
internal sealed class GaugeRow
{
    public static readonly IReadOnlyList<string> Thicknesses = ["coated", "bare", "eom"];

    private const int MostPasses = 20;

    private static readonly string[] DateForms = ["yyyy-MM-dd", "dd.MM.yyyy", "d.M.yyyy"];

    private readonly string where;
    private readonly SeparatedRow row;
    private readonly GaugeColumns columns;

    private GaugeRow(SeparatedRow row, GaugeColumns columns, string where) => (this.row, this.columns, this.where) = (row, columns, where);

    public GaugeEntry Entry { get; private set; } = new();

    public IReadOnlyList<string> Fields => row.Fields;

    public List<Problem> Refusals { get; } = [];

    public List<Problem> Flags { get; } = [];

    /// <summary>A number was written with a comma.</summary>
    public bool HasComma { get; private set; }

    /// <summary>Something beyond the value tells it from its repeats: a place, a number, a time of day.</summary>
    public bool IsNamed => columns.Of(row, "place") is not null || columns.Of(row, "repeat") is not null || columns.Of(row, "date")?.Contains(':', StringComparison.Ordinal) == true;

    public static GaugeRow Of(SeparatedRow row, GaugeColumns columns, string where, string? unit)
    {
        var made = new GaugeRow(row, columns, where);
        made.Read(unit);
        return made;
    }

    public void Refuse(string what, string column, string remedy) => Refusals.Add(new Problem(what, Place(column), remedy));

    public void Flag(string what, string column, string remedy) => Flags.Add(new Problem(what, Place(column), remedy));

    private string Place(string column) => columns.Has(column) ? $"{SeparatedText.Place(where, row.Line, columns.At(column) + 1)} ({column})" : $"{where}: line {row.Line}";

    private void Read(string? unit)
    {
        var (coated, bare, eom) = (Thickness("coated", unit), Thickness("bare", unit), Thickness("eom", unit));
        if (Refusals.Count == 0 && coated is null && bare is null && eom is null)
            Refuse("There is no thickness.", Thicknesses.First(columns.Has), "Read it again, or leave the line out.");
        switch (columns.Of(row, "kind")?.ToLowerInvariant())
        {
            case "bare" or "mesh" when bare is null:
                (coated, bare) = (null, coated);
                break;
            case "eom" when eom is null:
                (coated, eom) = (null, coated);
                break;
            case null or "coated" or "total" or "stencil" or "bare" or "mesh" or "eom":
                break;
            case { } other:
                Refuse($"'{Shown(other)}' is no kind of reading.", "kind", "Write bare, coated or eom.");
                break;
        }

        Entry = new GaugeEntry
        {
            CoatedUm = coated,
            BareUm = bare,
            EomUm = eom,
            Screen = Text("screen"),
            Place = Text("place"),
            Operator = Text("operator"),
            Trough = Text("trough"),
            Emulsion = Text("emulsion"),
            Lot = Text("lot"),
            MeshCountPerCm = Number("count", QuantityKind.PerLength, InputLimits.LeastCountPerCm, InputLimits.MostCountPerCm),
            ThreadUm = Number("thread", QuantityKind.Thickness, InputLimits.LeastThreadUm, InputLimits.MostThreadUm),
            Strokes = Strokes(),
            On = Day(),
            Line = row.Line,
        };
    }

    private double? Thickness(string column, string? unit)
    {
        if (columns.Of(row, column) is not { } text)
            return null;
        var faults = new ProblemList();
        var plain = WithPoint(text);
        var told = char.IsDigit(plain[^1]) ? plain + Spelt(columns.Of(row, "unit") ?? columns.Units.GetValueOrDefault(column) ?? unit ?? "") : plain;
        if (QuantityText.Read(told, QuantityKind.Thickness, Place(column), faults) is not { } um)
        {
            Refusals.AddRange(faults.Problems);
            return null;
        }

        var most = column == "eom" ? InputLimits.MostEomUm : InputLimits.MostFabricUm + InputLimits.MostEomUm;
        var least = column == "eom" ? -10.0 : 0.1;
        if (um >= least && um <= most)
            return um;
        Refuse($"{Figures.AsGiven(um)} µm is no thickness of a screen.", column, string.Create(CultureInfo.InvariantCulture, $"It should lie between {least} and {most} µm: check the number and its unit."));
        return null;
    }

    private string WithPoint(string text)
    {
        if (text.Contains('.', StringComparison.Ordinal) || text.Count(c => c == ',') != 1)
            return text;
        HasComma = true;
        return text.Replace(',', '.');
    }

    /// <summary>Units as gauges spell them.</summary>
    private static string Spelt(string unit) => unit.Trim().ToLowerInvariant() switch
    {
        "µ" or "μ" or "u" => "um",
        var other => other,
    };

    private string? Text(string column)
    {
        if (columns.Of(row, column) is not { } text)
            return null;
        if (text.Length <= InputLimits.LongestCatalogueName && !text.Any(UnseenCharacters.Are))
            return text;
        Refuse("It is too long, or holds characters that cannot be seen.", column, $"Write {InputLimits.LongestCatalogueName} plain characters at most.");
        return null;
    }

    /// <summary>What only describes the reading is flagged and left out where it can't be read.</summary>
    private double? Number(string column, QuantityKind kind, double least, double most)
    {
        if (columns.Of(row, column) is not { } text)
            return null;
        var faults = new ProblemList();
        var plain = WithPoint(text);
        var value = double.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var bare) ? bare : QuantityText.Read(plain, kind, Place(column), faults);
        if (value is { } read && read >= least && read <= most)
            return read;
        Flag($"'{Shown(text)}' can't be read as {kind.Name} and was left out.", column, string.Create(CultureInfo.InvariantCulture, $"Write {least} to {most} {kind.KeptIn}, or with a unit, as in {kind.Example}."));
        return null;
    }

    private string? Strokes()
    {
        if ((columns.Of(row, "strokes") ?? Passes()) is not { } text)
            return null;
        var faults = new ProblemList();
        if (StrokeText.TryRead(text, Place("strokes"), faults) is { } strokes)
            return StrokeText.Write(strokes);
        Flags.AddRange(faults.Problems);
        return null;
    }

    /// <summary>Print side first, then squeegee side, wet on wet, where only their numbers are told.</summary>
    private string? Passes() =>
        int.TryParse(columns.Of(row, "print passes"), NumberStyles.None, CultureInfo.InvariantCulture, out var print) && print <= MostPasses
        && int.TryParse(columns.Of(row, "squeegee passes"), NumberStyles.None, CultureInfo.InvariantCulture, out var squeegee) && squeegee <= MostPasses
            ? new string('P', print) + new string('S', squeegee)
            : null;

    private DateOnly? Day()
    {
        if (columns.Of(row, "date") is not { } text)
            return null;
        if (DateOnly.TryParseExact(text.Split(' ', 'T')[0], DateForms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return day;
        Flag($"'{Shown(text)}' is a day that can be read in two ways, or none; it was left out.", "date", "Write the year first: 2026-11-24.");
        return null;
    }

    private static string Shown(string text) => text.Length > 40 ? $"{text[..40]}…" : text;
}
