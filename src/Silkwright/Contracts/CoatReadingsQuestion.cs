using Silkwright.Coating.Learning;
using Silkwright.Estimates;
using Silkwright.Gauging;

namespace Silkwright.Contracts;

/// <summary>How many readings bring a mean near enough: <c>coat readings</c>.</summary>
public static class CoatReadingsQuestion
{
    /// <summary>Half widths that make sense. [µm]</summary>
    public const double LeastWantedUm = 0.05;
    public const double MostWantedUm = 100;

    /// <param name="readings">All readings, of any shops.</param>
    /// <param name="wantedUm">Half width of the interval that the mean should have. [µm]</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The wanted half width makes no sense.</exception>
    public static CoatReadingsNeeded Answer(IReadOnlyList<CoatRow> readings, double wantedUm, CancellationToken cancel = default)
    {
        if (!(wantedUm is >= LeastWantedUm and <= MostWantedUm))
            throw new InputProblemException(new Problem("No mean is known so closely, or so loosely.", "wanted", "Give the half width that is wanted, from 0.05 to 100 µm: 2um."));
        var taken = new CoatReadings(readings, []);
        var repeats = CoatQuestion.Repeatability(taken.Used);
        var spread = repeats ?? CoatHierarchy.Of(taken.Shared, cancel: cancel).ReadingSpreadUm;
        return new CoatReadingsNeeded
        {
            WantedUm = wantedUm,
            SpreadUm = spread,
            Needed = ReadingsNeeded.For(wantedUm, spread.Value),
            NeededAtWorst = ReadingsNeeded.For(wantedUm, spread.High),
            IsRepeated = repeats is not null,
            Flags = taken.Flags,
            Notes =
            [
                repeats is not null
                    ? new Note("Readings of one place by one gauge; from place to place and screen to screen a coat differs besides.", Ground.MeasuredHere)
                    : new Note("No place was read twice: what readings of one screen differ by was taken from how all readings scatter about the model.", spread.Ground),
                .. CoatNotes.Of(taken, []),
            ],
        };
    }
}
