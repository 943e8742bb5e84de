using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Web.Look;

namespace Silkwright.Web.Pages.Jobs.Sheet;

/// <summary>What each station says: one figure, its unit, one line of plain words.</summary>
/// <param name="Figure">The number as shown.</param>
/// <param name="Unit">Its unit or what it counts.</param>
/// <param name="Other">The same in the other units; none where there is no other.</param>
/// <param name="Estimate">The number with its interval, in <paramref name="Unit"/>; none where it is a name or exact.</param>
/// <param name="Ground">Where it comes from.</param>
/// <param name="Words">One line.</param>
public sealed record StationWords(string Figure, string Unit, string? Other, Estimate? Estimate, Ground? Ground, string Words)
{
    public static StationWords Of(Station station, ColourPlan plan, UnitSystem read) => station switch
    {
        Station.Film => Film(plan, read),
        Station.Mesh => Mesh(plan, read),
        Station.Coat => Coat(plan, read),
        Station.Dry => Dry(plan),
        Station.Expose => Expose(plan),
        _ => Print(plan, read),
    };

    private static StationWords Film(ColourPlan plan, UnitSystem read)
    {
        var needs = plan.Needs;
        (Estimate? finest, string what) = Finest(plan);
        var words = new List<string>
        {
            BareFilm.Is(plan.Colour.Film) ? "no artwork on it"
            : plan.Detail.Holds ? "this mesh holds all of it"
                : plan.Detail.TooFine.Count > 0 ? $"{plan.Detail.TooFine.Count} {(plan.Detail.TooFine.Count == 1 ? "place" : "places")} finer than this mesh holds"
                : "finer than this mesh holds",
        };
        if (needs.RulingLpi is { } ruling)
            words.Add($"{Figures.Plain(ruling.Value)} lpi{(needs.AngleDegrees is { } a ? $" at {Figures.Plain(a)}°" : string.Empty)}");
        words.Add($"{Figures.Value(needs.CoveragePercent)} % prints");
        if (finest is null)
            return new(Figures.Value(needs.CoveragePercent), "% prints", null, needs.CoveragePercent, needs.CoveragePercent.Ground, string.Join(", ", words));
        var quantity = Units.Length(finest, read);
        return new(quantity.Value, $"{quantity.Unit} {what}", Units.Length(finest, Units.Other(read)).ToString(), quantity.Estimate, finest.Ground, string.Join(", ", words));
    }

    /// <summary>The finest thing the artwork asks for, and its name.</summary>
    public static (Estimate? Um, string What) Finest(ColourPlan plan)
    {
        var needs = plan.Needs;
        return needs.SmallestDotUm is { } dot && dot.Value <= (needs.FinestLineUm?.Value ?? double.PositiveInfinity)
            ? (dot, "dot")
            : (needs.FinestLineUm, "line");
    }

    private static StationWords Mesh(ColourPlan plan, UnitSystem read)
    {
        var mesh = plan.Mesh;
        var dyed = mesh.Fabric.Dyed ? "dyed" : "white";
        return new(
            Units.Count(mesh.Fabric.CountPerCm, read),
            $"{Units.CountUnit(read)}, {Units.Length(mesh.Fabric.ThreadUm, read)}",
            $"{Units.Count(mesh.Fabric.CountPerCm, Units.Other(read))} {Units.CountUnit(Units.Other(read))}",
            null,
            mesh.InkVolumeCm3PerM2.Ground,
            $"{dyed}, openings {Units.Length(mesh.OpeningUm, read)}, holds dots from {Units.Length(mesh.SmallestDotUm, read)}");
    }

    private static StationWords Coat(ColourPlan plan, UnitSystem read)
    {
        if (plan.Coat is not { } coat)
            return None;
        var eom = Units.Length(coat.EomUm, read);
        return new(eom.Value, $"{eom.Unit} over mesh", Units.Length(coat.EomUm, Units.Other(read)).ToString(), eom.Estimate, coat.EomUm.Ground, Said.Of(coat.Strokes));
    }

    private static StationWords Dry(ColourPlan plan)
    {
        if (plan.Drying is not { } drying)
            return None;
        if (drying.MinutesToSafe is not { } safe)
            return new("never", "safe in this air", null, null, drying.MinutesToTouchDry.Ground, drying.StickReason);
        return new(Figures.Minutes(safe), "until safe", null, safe, safe.Ground, $"chance that the film sticks {Figures.Chance(drying.StickRiskPercent)} %");
    }

    private static StationWords Expose(ColourPlan plan)
    {
        if (plan.Exposure is not { } window)
            return None;
        var unit = Said.Unit(window.Counts);
        if (window.Aim is not { } aim)
            return new("no", "exposure does both", null, null, window.Least.Ground, window.OpensBy.Count > 0 ? window.OpensBy[0] : "The detail closes before the coat is cured through.");
        return new(
            Figures.Value(aim),
            unit,
            null,
            aim,
            aim.Ground,
            $"{(window.IsMeasured ? "" : "make a step test first; ")}window {Figures.Plain(window.LatitudeSteps)} steps wide; film black at {Figures.Plain(window.RequiredFilmDensityUv)} UV density or more");
    }

    private static StationWords Print(ColourPlan plan, UnitSystem read)
    {
        if (plan.Life is not { } life)
            return None;
        var spares = plan.Spares is not { } advice ? null
            : advice.Spares == 0 ? "no spare pays" : advice.Spares == 1 ? "keep one spare" : $"keep {advice.Spares} spares";
        var ink = plan.Ink is { } laid ? $"{Units.Mass(laid.InkGrams, read)} of ink" : null;
        return new(
            Figures.Chance(life.FinishPercent),
            "% finish the run",
            null,
            life.FinishPercent,
            life.FinishPercent.Ground,
            string.Join(", ", new[] { spares, ink }.OfType<string>()));
    }

    private static StationWords None { get; } = new("none", "fits", null, null, null, "no emulsion of this shop may be used here");
}
