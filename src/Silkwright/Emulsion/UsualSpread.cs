using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>
/// How far a figure that somebody gave usually is from the lot in hand, as a share of itself. [1] Common practice, no source:
/// docs/engines/emulsion.md, defaults.
/// </summary>
public static class UsualSpread
{
    public const double Solids = 0.05;
    public const double Density = 0.03;
    public const double PotLife = 0.25;
    public const double ShelfLife = 0.2;
    public const double Exposure = 0.25;
    public const double FilmThickness = 0.08;
    public const double PenetrationDepth = 0.2;
    public const double Price = 0.1;

    /// <summary>Own measurements of the own lot lie about half as far off as a datasheet, which speaks of every lot.</summary>
    private const double MeasuredHere = 0.5;

    /// <summary>Another shop measured, but another lot.</summary>
    private const double MeasuredElsewhere = 0.75;

    /// <summary>A rule of thumb speaks of a whole family.</summary>
    private const double RuleOfThumb = 1.5;

    /// <summary>A given figure with its usual spread.</summary>
    /// <param name="value">As given.</param>
    /// <param name="datasheetShare">Spread of a datasheet's figure, one of the constants here. [1]</param>
    /// <param name="ground">Where the figure comes from.</param>
    public static Estimate Around(double value, double datasheetShare, Ground ground) => Estimate.Within(
        value,
        datasheetShare * ground switch
        {
            Ground.MeasuredHere => MeasuredHere,
            Ground.MeasuredElsewhere => MeasuredElsewhere,
            Ground.CommonPractice => RuleOfThumb,
            _ => 1,
        },
        ground);
}
