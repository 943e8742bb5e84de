namespace Silkwright.Contracts;

/// <summary>
/// Bounds of what makes sense, the same at every door: command line, query string, JOB and SHOP documents, records. They catch
/// slips of the finger and wrong units; inside them the engines hold. All common practice, no source, where nothing else is said.
/// </summary>
public static class InputLimits
{
    /// <summary>Coarser no screen fabric is woven. [1/cm]</summary>
    public const double LeastCountPerCm = 5;

    /// <summary>Finer no screen fabric is woven. [1/cm]</summary>
    public const double MostCountPerCm = 250;

    /// <summary>Half the finest thread that is woven. [µm]</summary>
    public const double LeastThreadUm = 15;

    /// <summary>The thread of the coarsest fabric. [µm]</summary>
    public const double MostThreadUm = 500;

    /// <summary>A fabric is no thinner than its finest thread. [µm]</summary>
    public const double LeastFabricUm = 20;

    /// <summary>Two of the thickest threads. [µm]</summary>
    public const double MostFabricUm = 1000;

    /// <summary>A mesh that hangs. [N/cm]</summary>
    public const double LeastTensionNPerCm = 1;

    /// <summary>Textile mesh is stretched to 35 N/cm; twice that tears it. [N/cm]</summary>
    public const double MostTensionNPerCm = 60;

    /// <summary>Thickest stencils, for high-density prints, come near 700 µm. [µm]</summary>
    public const double MostEomUm = 1000;

    /// <summary>Thickest film that is laid for such stencils: a capillary film ends near its own thickness. [µm]</summary>
    public const double MostFilmUm = 700;

    /// <summary>Diodes last some ten thousand hours; twenty times that is a slip. [h]</summary>
    public const double MostLampHours = 200_000;

    /// <summary>Ten years: no sensitised emulsion lives a tenth of it. [days]</summary>
    public const double MostSensitiserDays = 3650;

    /// <summary>Shallower than the exposure engine can reckon with. [µm]</summary>
    public const double LeastPenetrationUm = 5;

    /// <summary>Below this there is no layer to speak of. [µm]</summary>
    public const double LeastWetUm = 1;

    /// <summary>A wet layer this thick runs off the screen. [µm]</summary>
    public const double MostWetUm = 2000;

    /// <summary>Thinner emulsions would be water. [%]</summary>
    public const double LeastSolidsPercent = 10;

    /// <summary>Least share that can be told from none. [%]</summary>
    public const double LeastCoveragePercent = 0.01;

    /// <summary>A film of 3 mm square. [cm²]</summary>
    public const double LeastAreaCm2 = 0.1;

    /// <summary>A film of 3 m square. [cm²]</summary>
    public const double MostAreaCm2 = 100_000;

    /// <summary>Finest detail anybody tells from none. [µm]</summary>
    public const double LeastDetailUm = 5;

    /// <summary>Wider is no detail. [µm]</summary>
    public const double MostDetailUm = 50_000;

    /// <summary>Impressions of a run or an entry: the longest lives told of are far below this.</summary>
    public const long MostImpressions = 10_000_000;

    /// <summary>A press that stands for ten days waits for no screen. [min]</summary>
    public const double MostStopMinutes = 14_400;

    /// <summary>A flash. [s, or the machine's units]</summary>
    public const double LeastExposure = 0.01;

    /// <summary>A day under the lamp. [s]</summary>
    public const double MostExposureSeconds = 86_400;

    /// <summary>Beyond the counters of machines. [the machine's units]</summary>
    public const double MostExposureUnits = 10_000_000;

    /// <summary>Wedges have 14 to 41 steps.</summary>
    public const int MostWedgeSteps = 41;

    /// <summary>Finer steps can't be told apart on a stencil. [1]</summary>
    public const double LeastDensityPerStep = 0.01;

    /// <summary>The coarsest wedge. [1]</summary>
    public const double MostDensityPerStep = 1;

    /// <summary>Fans blow no harder along a screen. [m/s]</summary>
    public const double MostAirSpeedMPerS = 20;

    /// <summary>Below the lowest shore. [m]</summary>
    public const double LeastAltitudeM = -500;

    /// <summary>Above the highest town. [m]</summary>
    public const double MostAltitudeM = 6000;

    /// <summary>A dark room with the door ajar. [lx]</summary>
    public const double LeastLux = 0.1;

    /// <summary>Full sun. [lx]</summary>
    public const double MostLux = 130_000;

    /// <summary>A hundred emulsions, each with every property from eight sources.</summary>
    public const int MostCatalogueLines = 20_000;

    /// <summary>As many as a shop's shelf may name.</summary>
    public const int MostCatalogueEmulsions = 500;

    /// <summary>A container's label is shorter.</summary>
    public const int LongestCatalogueName = 80;

    /// <summary>A sentence that says which sheet or test.</summary>
    public const int LongestCatalogueSource = 300;

    /// <summary>Fewer than one screen in a hundred days is no pace, and more than the largest shops make is a slip. [1/d]</summary>
    public const double LeastScreensPerDay = 0.01;

    /// <inheritdoc cref="LeastScreensPerDay"/>
    public const double MostScreensPerDay = 5000;
}
