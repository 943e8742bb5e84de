using System.Globalization;
using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>What a reader of an exposure window must know beside its numbers.</summary>
internal static class ExposureNotes
{
    internal static IEnumerable<Note> For(ExposureCase exposure, int strips, ExposureCount counts)
    {
        if (strips == 0)
        {
            yield return new Note(
                $"No step test of {exposure.Emulsion.Id} with {exposure.Lamp.Id} on {exposure.Mesh.Name}: its figures are orders of magnitude.",
                Ground.CommonPractice);
        }

        if (exposure.Tests.Any(strip => strip.Damp))
        {
            yield return new Note(
                "Strips that may not have been dry were left out: a damp coat looks under-exposed, and more light does not mend it.");
        }

        foreach (var note in StripContradictions.Of([.. exposure.Tests.Where(strip => !strip.Damp)], exposure, counts))
            yield return note;

        if (strips == 0 && counts == ExposureCount.Units)
            yield return new Note("No strip was dry: the units told stand about those that were exposed, right to a factor of 30. Dry strips on this machine tell.", Ground.CommonPractice);
        if (exposure.Lamp.Counts == ExposureCount.Units)
        {
            yield return new Note(counts == ExposureCount.Units
                ? $"Amounts are the own units of {exposure.Lamp.Id}; they mean nothing on another machine and are never converted."
                : $"{exposure.Lamp.Id} counts units of its own, which only a step test on it can tell: until then the amounts are seconds.");
        }

        var answers = LampSpectrum.Factor(exposure.Lamp, exposure.Emulsion);
        if (!LampSpectrum.IsBandTold(exposure.Emulsion) && answers.Value != 1)
        {
            yield return new Note(
                Text($"The light of {exposure.Lamp.Id} lies about {exposure.Lamp.PeakNm:0} nm, and such emulsions answer to that {(answers.Value > 1 ? "less" : "more")} than to a usual lamp of its kind: about {Figures.Value(answers)} times the exposure ({Figures.Interval(answers)}).{(LampSpectrum.HardlyHardens(exposure.Lamp, exposure.Emulsion) ? " Next to none of it lies where such emulsions are known to answer: it may never cure through. Ask their supplier before a step test." : "")}"),
                Ground.CommonPractice);
        }

        if (LampSpectrum.IsBandTold(exposure.Emulsion) && answers is { Value: > 1 } partly)
        {
            var (from, to) = LampSpectrum.Band(exposure.Lamp);
            yield return new Note(
                Text($"Part of the light of {exposure.Lamp.Id} (about {from:0} to {to:0} nm) lies outside what {exposure.Emulsion.Id} answers to: about {Figures.Value(partly)} times the exposure{Figures.InBrackets(Figures.Interval(partly))}."),
                Ground.CommonPractice);
        }

        if (FreshLight.Ask(exposure) is { } ask)
            yield return new Note(ask, Ground.Model);

        if (exposure.FinestLineUm is null)
        {
            yield return new Note(
                Text($"Finest line not given: {WindowInputs.NeededLineUm(exposure):0} µm, about the finest this mesh prints."),
                Ground.CommonPractice);
        }

        if (exposure.Film is null && exposure.Lamp.Imaging == Imaging.Film)
            yield return new Note("UV densities of the film not measured: 3.0 for the black, 0.07 for the clear.", Ground.CommonPractice);
        foreach (var note in ImagingOptics.Notes(exposure.Lamp).Concat(ForLamp(exposure.Lamp)))
            yield return note;
        if (!exposure.Mesh.Dyed)
        {
            yield return new Note(
                "White mesh scatters light past the edges; dyed mesh holds finer lines for half as much time again.",
                Ground.CommonPractice);
        }
    }

    private static IEnumerable<Note> ForLamp(Lamp lamp)
    {
        if (!LampGeometry.IsNearPoint(lamp.Kind))
        {
            if (lamp.DistanceMm is not null)
            {
                yield return new Note(
                    $"The distance of {lamp.Id} was not reckoned with: the inverse square does not hold for an array or a tube bank.");
            }
        }
        else if (lamp.DistanceMm is null)
        {
            yield return new Note(Text($"Distance of {lamp.Id} not given: {UsualExposure.DistanceMm(lamp.Kind):0} mm."), Ground.CommonPractice);
        }

        if (lamp.Kind == LampKind.Halogen)
            yield return new Note("A work lamp gives little light that hardens a stencil, and much heat.", Ground.CommonPractice);
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
