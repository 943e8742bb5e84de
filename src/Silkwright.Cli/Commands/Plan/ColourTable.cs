using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Life;
using Silkwright.Plans;
using Silkwright.Web.Look;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Plan;

/// <summary>One colour for people, along the making line: film, mesh, coat, dry, expose, wash out, print, reclaim.</summary>
/// <param name="plan">The colour's plan.</param>
/// <param name="number">Its place among the job's colours, from 1.</param>
/// <param name="job">Its job.</param>
/// <param name="currency">Of the costs.</param>
/// <param name="console">Where to.</param>
/// <param name="told">What was written out before, and at which colour; told in short again.</param>
internal sealed class ColourTable(ColourPlan plan, int number, Job job, string currency, IAnsiConsole console, Dictionary<string, string> told)
{
    /// <summary>Spots told; the document has them all.</summary>
    private const int SpotsTold = 3;

    private readonly PlanLines lines = new(console);
    private readonly ShownUnit money = new(currency);
    private readonly List<Caution> cautions = [.. plan.Cautions];

    public void Print(int of)
    {
        var film = plan.Colour.Film is { } measured ? $", film {measured.File}" : "";
        console.WriteLine($"{number} of {of}  {plan.Colour.Name}  ({Said.Of(plan.Colour.Ink)} ink, {Said.Of(plan.Colour.Role)}{film})");
        console.WriteLine(new string('─', console.Profile.Width));
        Film();
        Mesh();
        if (plan.Emulsion is null)
            NoEmulsion();
        Coat();
        Dry();
        Expose();
        WashOut();
        PrintRun();
        Cost();
        Reasons();
        console.WriteLine();
    }

    private void Film()
    {
        lines.Station("FILM");
        lines.Figure("Finest line", plan.Needs.FinestLineUm, ShownUnit.Micrometres);
        lines.Figure("Finest gap", plan.Needs.FinestGapUm, ShownUnit.Micrometres);
        lines.Figure("Halftone ruling", plan.Needs.RulingLpi, ShownUnit.PerInch);
        lines.Figure("Smallest halftone dot", plan.Needs.SmallestDotUm, ShownUnit.Micrometres);
        lines.Figure("Prints of the film", plan.Needs.CoveragePercent, ShownUnit.Percent);
    }

    private void Mesh()
    {
        var fabric = plan.Mesh.Fabric;
        lines.Station("MESH");
        var dyed = fabric.Dyed ? ", dyed" : "";
        lines.Say($"{fabric.Name}{dyed}: {ShownUnit.PerCm.WriteBoth(fabric.CountPerCm)}, thread {ShownUnit.Micrometres.WriteBoth(fabric.ThreadUm)}");
        if (plan.Frame is { } frame)
            lines.Say($"Frame {ShownUnit.Millimetres.WriteBoth(frame.InsideWidthMm)} x {ShownUnit.Millimetres.WriteBoth(frame.InsideHeightMm)} inside");
        lines.Figure("Holds lines from", plan.Detail.SmallestLineUm, ShownUnit.Micrometres);
        lines.Figure("Holds dots from", plan.Detail.SmallestDotUm, ShownUnit.Micrometres);
        lines.Say(plan.Detail.Reason);
        if (plan.Detail.Remedy is { } remedy)
            lines.Say($"DOES NOT HOLD the artwork. {remedy.Sentence}");
        if (plan.Detail.TooFine.Count > 0)
        {
            var spots = plan.Detail.TooFine.Take(SpotsTold).Select(spot => $"{spot.XMm:0.0}, {spot.YMm:0.0} mm ({ShownUnit.Micrometres.Write(Math.Round(spot.WidthUm))})");
            lines.Say($"Too fine for it: {string.Join("; ", spots)}{(plan.Detail.TooFine.Count > SpotsTold ? $"; {plan.Detail.TooFine.Count - SpotsTold} more" : "")}. Counted from the film's top left.");
        }
    }

    private void NoEmulsion()
    {
        lines.Station("COAT");
        lines.Say("No emulsion of this shop may be used for this colour.");
        if (plan.NearestFix is { } fix)
            lines.Say($"Nearest way out: {fix}");
    }

    private void Coat()
    {
        if (plan is not { Coat: { } coat, Emulsion: { } emulsion })
            return;
        lines.Station("COAT");
        Before("mixing", "degreasing", "coating");
        var lot = emulsion.Lot is { } named ? $", lot {named}" : "";
        lines.Say($"{emulsion.Id}{lot}: {(coat.Strokes.Count == 0 ? "film laid on" : Said.Of(coat.Strokes))}{(plan.Trough is { } trough ? $", with the {trough.Id} trough" : "")}");
        lines.Figure("Emulsion over mesh", coat.EomUm, ShownUnit.Micrometres);
        lines.Figure("Stencil in all", coat.StencilUm, ShownUnit.Micrometres);
        lines.Figure("Emulsion, a square metre", coat.GramsPerM2, ShownUnit.Grams);
    }

    private void Dry()
    {
        if (plan.Drying is not { } drying)
            return;
        lines.Station("DRY");
        Before("drying");
        lines.Figure("Dry to the touch", drying.MinutesToTouchDry, ShownUnit.Minutes);
        lines.Figure("Safe to expose", drying.MinutesToSafe, ShownUnit.Minutes);
        if (drying.MinutesToSafe is null)
            lines.Say("Never safe to expose in this air: dry the air first.");
        lines.Figure("Risk that film sticks", drying.StickRiskPercent, ShownUnit.Chance);
        if (told.TryAdd(drying.StickReason, ""))
            lines.Say(drying.StickReason);
    }

    private void Expose()
    {
        if (plan.Exposure is not { } window)
            return;
        var unit = window.Counts == ExposureCount.Seconds ? ShownUnit.Seconds : ShownUnit.Units;
        lines.Station("EXPOSE");
        Before("exposing");
        if (!window.IsMeasured)
            lines.Say($"MAKE A STEP TEST BEFORE EXPOSING: nobody has measured {plan.Emulsion?.Id} with {plan.Lamp?.Id} on {plan.Mesh.Fabric.Name}, and the times below are orders of magnitude.");
        if (plan.Lamp is { } lamp)
            lines.Say($"With {lamp.Id}");
        lines.Figure("Least that cures", window.Least, unit);
        lines.Figure("Aim", window.Aim, unit);
        lines.Figure("Most that holds detail", window.Most, unit);
        foreach (var line in ExposurePicture.Lines(window, unit))
            lines.Line(line);
        lines.Say($"Latitude {Figures.Plain(window.LatitudeStops)} stops, {Figures.Plain(window.LatitudeSteps)} steps of a 0.15 wedge{(window.SolidStepAtAim is { } step ? $"; last solid step at the aim about {step:0}" : "")}. Film density in ultraviolet at least {window.RequiredFilmDensityUv:0.0}.");
        lines.Figure("Finest line held", window.FinestHeldUm, ShownUnit.Micrometres);
        if (window.Aim is null)
            lines.Say($"No exposure cures it and holds the detail. {AimWords.Of(window)} What would open a window: {string.Join("; ", window.OpensBy)}.");
    }

    private void WashOut()
    {
        if (plan.Emulsion is null)
            return;
        lines.Station("WASH OUT");
        Before("washing out", "hardening");
        lines.Say(plan.Finish switch
        {
            StencilFinish.PostExposed => "Then dry, and expose a second time.",
            StencilFinish.Hardened => "Then dry, expose a second time and harden; a hardened stencil is usually never reclaimed.",
            _ => "Then dry and use.",
        });
        foreach (var option in plan.Finishes.Where(option => option.Finish != plan.Finish))
            lines.Say($"Or {FinishWords.Of(option, currency)}.");
    }

    private void PrintRun()
    {
        if (plan.Ink is null && plan.Life is null)
            return;
        lines.Station("PRINT");
        Before("printing");
        lines.Figure("Wet ink", plan.Ink?.WetDepositUm, ShownUnit.Micrometres);
        lines.Weight("Ink for the run", plan.Ink?.InkGrams);
        lines.Figure("One stencil lasts", plan.Life?.MedianImpressions, ShownUnit.Impressions);
        lines.Figure($"Finishes {Figures.Whole(job.Run * plan.Colour.ImpressionsPerGarment)} imp.", plan.Life?.FinishPercent, ShownUnit.Chance);
        if (plan.Spares is { } spares)
            lines.Say(spares.Spares switch { 0 => "No spare screen pays.", 1 => "One spare screen pays.", var many => $"{many} spare screens pay." });
        lines.Station("AFTER");
        Before("reclaiming");
        foreach (var left in cautions.ToArray())
            Tell(left);
    }

    private void Cost()
    {
        if (plan.Cost is not { } cost)
            return;
        lines.Station("COST");
        lines.Figure("Expected, all told", cost.Total, money);
        foreach (var line in CostPicture.Lines(cost, money))
            lines.Line(line);
    }

    private void Reasons()
    {
        lines.Station("BECAUSE");
        foreach (var reason in plan.Because)
            lines.Say(reason);
        lines.Station("BEATEN");
        foreach (var beaten in plan.Beaten)
        {
            var dearer = beaten.CostDifference is { } more ? $" ({Figures.More(more)}: {Figures.Interval(more)} {currency} {GroundMark.Mark(more.Ground)})" : "";
            lines.Say($"{beaten.Emulsion.Id}{(beaten.RuledOut ? ", ruled out" : dearer)}: {beaten.Why}");
        }
    }

    /// <summary>The cautions that come before some steps, each once.</summary>
    private void Before(params string[] steps)
    {
        foreach (var caution in cautions.Where(c => steps.Any(step => c.Step.EndsWith(step, StringComparison.OrdinalIgnoreCase))).ToArray())
            Tell(caution);
    }

    private void Tell(Caution caution)
    {
        var before = told.GetValueOrDefault(caution.Text);
        lines.Caution(caution, before);
        if (before is null)
            told.Add(caution.Text, $"colour {number}, {plan.Colour.Name}");
        cautions.Remove(caution);
    }
}
