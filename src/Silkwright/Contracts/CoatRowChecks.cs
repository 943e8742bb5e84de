using System.Globalization;
using Silkwright.Coating.Learning;

namespace Silkwright.Contracts;

/// <summary>Readings held against what their coat can be and against each other: other units, a total for a coat, the same line twice.</summary>
internal static class CoatRowChecks
{
    private const double UmPerMil = 25.4;

    /// <summary>A reading within this factor of what the balance expects is like it. Common practice: the model itself is ±50 %. [1]</summary>
    private const double LikeFactor = 2.5;

    /// <summary>Thinner coats are too near to bare mesh to be told from a slip. [µm]</summary>
    private const double LeastToJudgeUm = 5;

    /// <summary>Lines that are there twice are listed up to so many; the rest are counted.</summary>
    private const int MostTwiceListed = 50;

    public static IReadOnlyList<CoatFlag> Of(IReadOnlyList<CoatRow> rows)
    {
        var expected = new Dictionary<CoatShape, double>();
        var seen = new Dictionary<string, int>();
        var flags = new List<CoatFlag>();
        var twice = 0;
        foreach (var row in rows)
        {
            var shape = CoatShape.Of(row.Coat);
            if (!expected.TryGetValue(shape, out var um))
                expected[shape] = um = CoatColumns.Of(row.Coat).Slopes.EomUm;
            if (OtherMeasure(row, um) is { } other)
                flags.Add(other);
            else if (!seen.TryAdd(row.Written, row.Line) && Twice(row, seen[row.Written]) is var same && (!same.Used || ++twice <= MostTwiceListed))
                flags.Add(same);
        }

        return flags;
    }

    private static CoatFlag? OtherMeasure(CoatRow row, double expectedUm)
    {
        if (row.EomUm is not { } eom || expectedUm < LeastToJudgeUm || IsLike(eom, expectedUm))
            return null;
        var fabric = row.Coat.Mesh.FabricThicknessUm.Value;
        if (eom > 0 && eom * LikeFactor * LikeFactor < expectedUm && IsLike(eom * UmPerMil, expectedUm))
            return new CoatFlag(row.Line, "eomUm", Text($"{eom:0.###} µm where about {expectedUm:0} µm are usual: it looks like mil."), Text($"If it is {eom:0.###} mil, write {eom * UmPerMil:0.#}; if not, read it again."), false);
        if (eom > fabric && IsLike(eom - fabric, expectedUm))
            return new CoatFlag(row.Line, "eomUm", Text($"{eom:0.#} µm where about {expectedUm:0} µm are usual: it looks like the coated thickness, mesh and all."), "Take the bare mesh off, or put it in totalUm with meshUm beside it.", false);
        return IsLike(eom / UmPerMil, expectedUm)
            ? new CoatFlag(row.Line, "eomUm", Text($"{eom:0.#} µm where about {expectedUm:0} µm are usual: it looks like a number in µm turned into µm once more."), Text($"If so, write {eom / UmPerMil:0.#}; if not, read it again."), false)
            : null;
    }

    private static CoatFlag Twice(CoatRow row, int first) => (row.Point ?? row.Repeat) is not null
        ? new CoatFlag(row.Line, "repeat", $"The same line stands at {first}.", "Leave it out; if it is another reading, give it its own repeat.", false)
        : new CoatFlag(row.Line, "eomUm", $"The same line stands at {first}. A repeat that reads the same looks so too: it was learnt from.", "Fill in screen, point and repeat, then a line that is there twice is told from them.", true);

    private static bool IsLike(double um, double expectedUm) => um > expectedUm / LikeFactor && um < expectedUm * LikeFactor;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
