using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>The usual cautions for a plan, in the order of the work. They never replace a safety data sheet or local rules.</summary>
public static class Cautions
{
    public static IReadOnlyList<Caution> For(StencilEmulsion? emulsion, InkKind ink, StencilFinish finish)
    {
        var cautions = new List<Caution>();
        EmulsionFamily[] families = emulsion is null ? [] : [emulsion.Family, emulsion.Liquid().Family];
        if (families.Any(FamilyValues.NeedsSensitiser))
            Add("Before mixing", CautionLevel.Caution, "The sensitiser can irritate, and make skin allergic for life. Gloves, no dust, rinse at once; its safety data sheet decides.");
        if (families.Any(family => family is EmulsionFamily.DualCure or EmulsionFamily.Photopolymer))
            Add("Before coating", CautionLevel.Caution, "Some coats of this kind hold acrylates, which can make skin allergic for life. Nitrile gloves, no skin contact; the safety data sheet says whether this one does.");
        Add("Before drying", CautionLevel.Warning, "Heat and dust are a fire load. A cabinet with thermostat and over-temperature cut-out, clean filters, no solvents or aerosols inside, not left alone. Above 40 °C the coat itself begins to harden.");
        Add("Before exposing", CautionLevel.Warning, "Ultraviolet and violet light burn eyes and skin, and some people are far more sensitive than others. Closed cover or curtain, never look in; the lamp's manual and local rules decide.");
        Add("Before washing out", CautionLevel.Warning, "Pressure water injures, and water beside mains light or pumps kills. Face shield, ears covered, residual-current protection checked by a licensed electrician.");
        if (finish == StencilFinish.Hardened)
            Add("Before hardening", CautionLevel.Warning, "Hardeners are acids or aldehydes and burn; a hardened screen usually cannot be reclaimed, so decide on purpose. Gloves, goggles, air; the safety data sheet decides.");
        if (ink == InkKind.Discharge)
            Add("Before printing", CautionLevel.Warning, "Discharge inks give off formaldehyde and sulphur gases in the dryer. Extraction to the outside, wash the garments; the ink's safety data sheet and local limits decide.");
        if (ink is InkKind.Uv or InkKind.Solvent)
            Add("Before printing", CautionLevel.Warning, "Uncured UV ink holds acrylates that make skin allergic for life; solvent vapour is harmful and burns. Gloves, air, no flames; the safety data sheet decides.");
        Add("Before reclaiming", CautionLevel.Warning, "Stencil removers are oxidisers, often periodate, and haze removers strong caustic: both blind and burn. They must not meet each other or bleach. Goggles and shield, gloves, air; the safety data sheets and the local sewer's permit decide.");
        return cautions;

        void Add(string step, CautionLevel level, string text) => cautions.Add(new Caution(step, text, level));
    }
}
