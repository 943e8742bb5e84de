using Silkwright.Coating;
using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>Hands-on minutes and costs of screen making. Common practice, no source, except the prices a shop gives.</summary>
public static class WorkTimes
{
    /// <summary>Reclaim, degrease, expose and develop, check and tape, without the coating strokes. [min]</summary>
    public static readonly Estimate BaseMinutes = new(23, 17, 30, Ground.CommonPractice);

    /// <summary>One wet stroke. [min]</summary>
    private const double MinutesPerStroke = 0.5;

    /// <summary>Taking a screen out, coating a face and putting it back to dry. [min]</summary>
    private const double MinutesPerDrying = 4;

    /// <summary>Exposing a second time. [min]</summary>
    private const double MinutesToPostExpose = 3;

    /// <summary>Brushing hardener on both sides and racking the screen. [min]</summary>
    private const double MinutesToHarden = 10;

    /// <summary>Stirring a sensitiser into a container, shared over the screens it coats. [min]</summary>
    private const double MinutesToMixPerScreen = 0.5;

    /// <summary>Share of the exposure that somebody stands and waits. [1]</summary>
    private const double WaitingShare = 0.5;

    /// <summary>A hardened screen is seldom reclaimed: its mesh, and some hardener. [currency]</summary>
    public static readonly Estimate HardenedScreen = new(25, 15, 38, Ground.CommonPractice);

    /// <summary>Labour in the screen room where the shop has not said. [currency/h]</summary>
    public static readonly Estimate LabourPerHour = new(25, 16, 38, Ground.CommonPractice);

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

    /// <summary>Hands-on minutes for one screen. [min]</summary>
    public static Estimate Minutes(CoatPrediction coat, bool mixed, double exposureSeconds, StencilFinish finish)
    {
        var strokes = coat.Strokes.Count;
        var dryings = coat.Strokes.Count(stroke => stroke.AfterDrying);
        var extra = (strokes * MinutesPerStroke) + (dryings * MinutesPerDrying) + (exposureSeconds / 60 * WaitingShare)
            + (mixed ? MinutesToMixPerScreen : 0)
            + finish switch
            {
                StencilFinish.PostExposed => MinutesToPostExpose,
                StencilFinish.Hardened => MinutesToHarden,
                _ => 0,
            };
        return BaseMinutes.Map(minutes => minutes + extra);
    }
}
