using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>An aimed coat in sentences.</summary>
public static class CoatAimWords
{
    /// <summary>Why these strokes, and what would change it.</summary>
    public static IEnumerable<string> Because(CoatAimAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var (aim, best) = (answer.Aim, answer.Aim.Best);
        yield return $"{StrokeText.Write(best.Coat.Strokes)} leaves {Um(best)} µm on average{Figures.InBrackets(Figures.Interval(best.MeanUm))}; one screen lands within {Figures.Plain(answer.ToleranceUm)} µm of {Figures.Plain(answer.WantedUm)} µm in {Percent(best.ChancePercent)} of cases.";
        if (aim.Shorter is { } shorter)
            yield return $"With less work, {StrokeText.Write(shorter.Coat.Strokes)}{Hand(shorter)} leaves {Um(shorter)} µm and lands in {Percent(shorter.ChancePercent)}.";
        if (aim.Others.Count > 0)
            yield return $"In other hands: {StrokeText.Write(aim.Others[0].Coat.Strokes)}{Hand(aim.Others[0])} leaves {Um(aim.Others[0])} µm and lands in {Percent(aim.Others[0].ChancePercent)}.";
        yield return aim.ChanceAfterReadingsPercent > best.ChancePercent + 1
            ? $"{CoatAim.MoreReadings} readings of this coat that come out as expected would make it {Percent(aim.ChanceAfterReadingsPercent)}; if they come out otherwise, other strokes will be told."
            : "More readings would hardly change the chance: what is left is how screens of one coat differ.";
        if (best.Coat.Strokes.Count(stroke => stroke.AfterDrying) is > 0 and var faces)
            yield return $"{(faces == 1 ? "One face coat, over the dried coat" : $"{faces} face coats, each over a dried coat")}: a rounder edge or more solids would save {(faces == 1 ? "it" : "some")}.";
        if (Math.Abs(best.MeanUm.Value - answer.WantedUm) > answer.ToleranceUm)
            yield return best.MeanUm.Value > answer.WantedUm ? "No usual strokes lay so little: a sharper edge, a finer mesh or fewer solids." : "No usual strokes lay so much: a rounder edge, more solids or a thick capillary film.";
    }

    /// <summary>Whose hands, where it is known.</summary>
    public static string Hand(AimedCoat aimed)
    {
        ArgumentNullException.ThrowIfNull(aimed);
        return (aimed.Coat.Trough.Id.Length > 0 ? $" with {aimed.Coat.Trough.Id}" : "") + (aimed.Coat.Operator is { } name ? $" by {name}" : "");
    }

    internal static IEnumerable<Note> Notes(StencilEmulsion emulsion, bool nobody, bool usualArea, int readings, CoatExperience? elsewhere)
    {
        if (elsewhere is not null)
            yield return CoatNotes.OfExperience(elsewhere);
        else if (readings == 0)
            yield return new Note("No readings: what is told is what the trade expects of such strokes.", Ground.CommonPractice);
        if (nobody)
            yield return new Note("No people or troughs are known: anybody with a trough of a round edge of 1.5 mm, down to a sharp one, is inside the interval.", Ground.CommonPractice);
        if (emulsion.SolidsPercent is null)
            yield return new Note("The solids are not known: 37 % by weight are taken (32 to 42).", Ground.CommonPractice);
        if (usualArea)
            yield return new Note("A screen is taken as coated over 50 x 60 cm.", Ground.CommonPractice);
    }

    /// <summary>To half a micrometre, so that strokes can be told apart whose intervals overlap.</summary>
    private static string Um(AimedCoat aimed) => Figures.Plain(Math.Round(2 * aimed.MeanUm.Value) / 2);

    /// <summary>A chance to land, in words: nothing is sure.</summary>
    /// <param name="percent">[%]</param>
    public static string Percent(double percent) => percent > 99 ? "more than 99 %" : $"{percent:0} %";
}
