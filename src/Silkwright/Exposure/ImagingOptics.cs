using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>What a way of imaging does to the light, where nobody has measured. All common practice without a source, and wide: docs/engines/exposure.md, "Ways of imaging".</summary>
internal static class ImagingOptics
{
    /// <summary>A normal spot's width at half its height over its standard deviation: 2√(2 ln 2). [1]</summary>
    private const double WidthPerDeviation = 2.354820045;

    private static readonly Estimate Nothing = Estimate.Exact(0, Ground.Model);

    private static readonly Estimate DirectSpotUm = new(18, 10, 35, Ground.CommonPractice);

    private static readonly Estimate ProjectedSpotUm = new(30, 15, 60, Ground.CommonPractice);

    /// <summary>What one pass lies beside the next. [µm], standard deviation.</summary>
    private const double PassUm = 3;

    /// <summary>A spot that is told is right to this share. [1]</summary>
    private const double ToldSpotShare = 0.15;

    /// <summary>Air between image and coat. [µm]</summary>
    internal static Estimate GapUm(Imaging imaging) => imaging == Imaging.Film ? CoatOptics.GapUm : Nothing;

    /// <summary>Half angle of the light that falls on the coat. [degrees]</summary>
    internal static double HalfAngleDegrees(Lamp lamp) => lamp.BeamHalfAngleDegrees ?? lamp.Imaging switch
    {
        Imaging.Direct => 6,
        Imaging.Projection => 8,
        _ => LampGeometry.HalfAngleDegrees(lamp.Kind),
    };

    /// <summary>Density of what stands for the black: film, mask, or the light that an imager spills where it should write none. [1]</summary>
    internal static Estimate DMaxUv(Imaging imaging) => imaging switch
    {
        Imaging.Film => CoatOptics.DMaxUv,
        Imaging.PrintedMask => new(3, 2.3, 3.8, Ground.CommonPractice),
        Imaging.Direct => new(3, 2.5, 3.7, Ground.CommonPractice),
        _ => new(2.4, 1.9, 3, Ground.CommonPractice),
    };

    /// <summary>Density of what stands for the clear. [1]</summary>
    internal static Estimate DMinUv(Imaging imaging) => imaging is Imaging.Film or Imaging.Projection ? CoatOptics.DMinUv : Nothing;

    /// <summary>Standard deviation of a spot of light, its passes beside each other included. [µm]</summary>
    internal static Estimate BlurUm(Lamp lamp)
    {
        if (lamp.Imaging is not (Imaging.Direct or Imaging.Projection))
            return Nothing;
        var width = lamp.SpotUm is { } told ? Estimate.Within(told, ToldSpotShare, Ground.MeasuredHere) : lamp.Imaging == Imaging.Direct ? DirectSpotUm : ProjectedSpotUm;
        var passes = lamp.Imaging == Imaging.Direct ? lamp.Passes ?? 1 : 1;
        var beside = PassUm * PassUm * (1 - (1.0 / passes));
        return width.Map(um => Math.Sqrt((um / WidthPerDeviation * (um / WidthPerDeviation)) + beside));
    }

    /// <summary>The usual exposures are of contact frames; elsewhere they tell no more than an order of magnitude.</summary>
    internal static bool HasUsualExposure(Imaging imaging) => imaging is Imaging.Film or Imaging.PrintedMask;

    /// <summary>What a reader must know of the way.</summary>
    internal static IEnumerable<Note> Notes(Lamp lamp)
    {
        switch (lamp.Imaging)
        {
            case Imaging.PrintedMask:
                yield return new Note("A mask printed on the coat: no film and no air under it. What is asked for as film density is the mask's. How sharp a printer's drops stand is not reckoned with.", Ground.CommonPractice);
                break;
            case Imaging.Direct:
                yield return new Note(
                    $"Light written onto the coat: the edge is its spot, {Spot(lamp)}, spread in the coat; no vacuum, no film. Amounts add up over the passes. What is asked for as film density is how much less light falls where none is written.",
                    Ground.CommonPractice);
                yield return new Note("An imager's dose before a test is not known, not even to the order of magnitude of a frame's lamp: its step test places the window.", Ground.CommonPractice);
                break;
            case Imaging.Projection:
                yield return new Note(
                    $"An image thrown through a lens: no contact; the edge is the lens's spot, {Spot(lamp)}, spread in the coat, and stray light thins the black. Its dose before a test is not known.",
                    Ground.CommonPractice);
                break;
        }
    }

    private static string Spot(Lamp lamp) => lamp.SpotUm is { } um ? $"{um:0} µm wide at half its height" : lamp.Imaging == Imaging.Direct ? "10 to 35 µm wide where it is not told" : "15 to 60 µm wide where it is not told";
}
