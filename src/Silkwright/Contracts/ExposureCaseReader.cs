using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>Reads an exposure case: docs/schema/expose-case.json.</summary>
public static class ExposureCaseReader
{
    /// <summary>What a case cannot be without, and how it is written.</summary>
    private static readonly (string Name, string Example)[] Needed =
    [
        ("mesh", """{"countPerCm": 120, "threadUm": 34, "dyed": true}"""), ("emulsion", """{"family": "dualCure"}"""), ("lamp", """{"kind": "ledArray"}"""),
    ];


    /// <param name="json">The document.</param>
    /// <param name="where">The file's name, for messages.</param>
    /// <exception cref="InputProblemException">Every fault of the document.</exception>
    public static ExposureCase Read(string json, string where)
    {
        var problems = new ProblemList();
        var root = DocumentField.Root(json, where, problems);
        problems.ThrowIfAny();
        foreach (var (name, example) in Needed.Where(needed => !root[needed.Name].IsThere))
            root[name].Missing($"the field \"{name}\", as \"{name}\": {example}");
        if (!problems.IsEmpty)
            root.RefuseSlips();
        problems.ThrowIfAny();
        var fabric = ShopReader.Fabric(root["mesh"], problems);
        var coat = root["coat"];
        var value = coat["eomUm"].Number("µm", 0, InputLimits.MostEomUm);
        var (low, high) = (coat["low"].Number("µm", 0, InputLimits.MostEomUm), coat["high"].Number("µm", 0, InputLimits.MostEomUm));
        if (value is { } eom && ((low ?? eom) > eom || (high ?? eom) < eom))
            problems.Add("The coat is not between low and high.", coat.Path, "Give the lowest and the highest it may be, and eomUm between them.");
        var emulsion = ShopReader.EmulsionOf(root["emulsion"], "this emulsion");
        var lamp = ShopReader.LampOf(root["lamp"], 0);
        var film = ShopReader.FilmOf(root["film"], problems);
        var detail = root["detail"];
        var tests = root["tests"].Entries(ShopReader.MostReadings).Select(field => StripReader.Read(field, problems)).ToArray();
        foreach (var strip in root["tests"].Entries(ShopReader.MostReadings))
            StripReader.Counted(strip, lamp.Counts, "lamp", problems);
        var (line, gap) = (Detail("finestLineUm"), Detail("finestGapUm"));
        var on = root["on"].Date();
        RefuseTestsToCome(root, on, tests, problems);
        root.RefuseSlips();
        problems.ThrowIfAny();
        var over = value is { } given ? new Estimate(given, low ?? given, high ?? given, Ground.MeasuredHere) : StripCoat.EomUm(tests);
        return new ExposureCase
        {
            Mesh = fabric,
            EomUm = over,
            StencilUm = StencilThickness.Of(fabric, over),
            Emulsion = emulsion,
            Lamp = lamp,
            Film = film,
            FinestLineUm = line,
            FinestGapUm = gap,
            Tests = tests,
            On = on,
        };

        double? Detail(string name) => detail[name].Number("µm", InputLimits.LeastDetailUm, InputLimits.MostDetailUm);
    }

    /// <summary>What was not exposed yet on the day of the case cannot speak of it: one of the dates is wrong.</summary>
    private static void RefuseTestsToCome(DocumentField root, DateOnly? on, StepTest[] tests, ProblemList problems)
    {
        if (on is not { } day)
            return;
        var dated = tests.Count(test => test.On is not null);
        (DocumentField Field, DateOnly On)[] late = [.. root["tests"].Entries(ShopReader.MostReadings).Zip(tests).Where(one => one.Second.On > day).Select(one => (one.First["on"], one.Second.On!.Value))];
        if (late.Length == 0)
            return;
        if (late.Length == dated)
        {
            problems.Add(
                Text($"The case is dated {day:yyyy-MM-dd}, before every dated test of it."), root["on"].Path,
                Text($"Give the day that is asked about, {late.Max(one => one.On):yyyy-MM-dd} or later, or leave it out: then it is the day of the latest test."));
            return;
        }

        foreach (var (field, tested) in late)
            problems.Add(Text($"This test is dated {tested:yyyy-MM-dd}, after the case, {day:yyyy-MM-dd}."), field.Path, "Give the day on which it was exposed, or the case a later one; leave the test out where the case asks about a day before it.");

        static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
    }
}
