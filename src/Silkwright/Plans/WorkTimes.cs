using Silkwright.Choosing;
using Silkwright.Coating;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>Hands-on minutes and costs of screen making. Common practice, no source, except the prices a shop gives.</summary>
public static class WorkTimes
{
    /// <summary>Setting up the exposure, washing out, checking and taping. [min]</summary>
    private static readonly Estimate MakingMinutes = new(14, 10, 19, Ground.CommonPractice);

    /// <summary>Taking an ordinary stencil off and degreasing. [min]</summary>
    internal static readonly Estimate ReclaimMinutes = new(9, 6, 13, Ground.CommonPractice);

    /// <summary>One wet stroke. [min]</summary>
    private const double MinutesPerStroke = 0.5;

    /// <summary>Cutting a capillary film, laying it and peeling its carrier off. Guess, no source. [min]</summary>
    private const double MinutesToLayFilm = 2.5;

    /// <summary>Putting a screen up to dry and fetching it. [min]</summary>
    private const double MinutesPerDrying = 2;

    /// <summary>Exposing a second time. [min]</summary>
    private const double MinutesToPostExpose = 3;

    /// <summary>Brushing hardener on both sides and racking the screen. [min]</summary>
    private const double MinutesToHarden = 10;

    /// <summary>Stirring a sensitiser into a container, shared over the screens it coats. [min]</summary>
    private const double MinutesToMixPerScreen = 0.5;

    /// <summary>How far two crews are from each other in the minutes above, as a share. [1]</summary>
    private const double HabitShare = 0.3;

    /// <summary>Share of the exposure that somebody stands and waits. [1]</summary>
    private const double WaitingShare = 0.5;

    /// <summary>Hardener for one screen. [currency]</summary>
    public static readonly Estimate HardenerPerScreen = new(3, 1.5, 5, Ground.CommonPractice);

    /// <summary>The mesh of a hardened screen, which is seldom reclaimed. [currency]</summary>
    public static readonly Estimate MeshLost = new(22, 13, 34, Ground.CommonPractice);

    /// <summary>Stencil remover and degreaser for one screen. [currency]</summary>
    public static readonly Estimate RemoverPerScreen = new(0.4, 0.2, 0.8, Ground.CommonPractice);

    /// <summary>An hour of a place in the drying cabinet: floor, warmth, dry air. [currency/h]</summary>
    public static readonly Estimate DryingPlacePerHour = new(0.15, 0.05, 0.4, Ground.CommonPractice);

    /// <summary>Labour in the screen room where the shop has not said. [currency/h]</summary>
    public static readonly Estimate LabourPerHour = new(25, 16, 38, Ground.CommonPractice);

    /// <summary>How far a shop's own labour rate may lie from what an hour costs it, as a share. Common practice, no source. [1]</summary>
    public const double OwnLabourSpread = 0.05;

    /// <summary>Press and crew standing still, where the shop has not said. [currency/min]</summary>
    public static readonly Estimate StopPerMinute = new(1.0, 0.5, 2.0, Ground.CommonPractice);

    /// <summary>Minutes until a new screen is on press when no spare is ready. [min]</summary>
    public static readonly Estimate RemakeMinutes = new(120, 60, 240, Ground.CommonPractice);

    /// <summary>Minutes until a finished spare is on press. [min]</summary>
    public static readonly Estimate SpareMinutes = new(20, 12, 30, Ground.CommonPractice);

    /// <summary>Area coated on a screen whose frame is not known: a 51 x 61 cm frame. [cm²]</summary>
    public static readonly Estimate CoatedCm2 = new(2000, 1500, 3200, Ground.CommonPractice);

    /// <summary>Screens a day where the shop has not said. [1/d]</summary>
    public static readonly Estimate ScreensPerDay = new(8, 3, 25, Ground.CommonPractice);

    /// <summary>Hands-on minutes for one screen.</summary>
    public static ScreenWork Of(CoatPrediction coat, bool film, bool mixed, double exposureSeconds, StencilFinish finish)
    {
        var strokes = coat.Strokes.Count;
        var dryings = 1 + coat.Strokes.Count(stroke => stroke.AfterDrying);
        return new ScreenWork(
            Coating: Habit((strokes * MinutesPerStroke) + (film ? MinutesToLayFilm : 0) + (mixed ? MinutesToMixPerScreen : 0)),
            Drying: Habit(dryings * MinutesPerDrying),
            Exposing: Habit(exposureSeconds / 60 * WaitingShare),
            Making: MakingMinutes,
            Finish: Habit(finish switch
            {
                StencilFinish.PostExposed => MinutesToPostExpose,
                StencilFinish.Hardened => MinutesToHarden,
                _ => 0,
            }),
            Reclaim: ReclaimMinutes);

        static Estimate Habit(double minutes) => Estimate.Within(minutes, HabitShare, Ground.CommonPractice);
    }
}
