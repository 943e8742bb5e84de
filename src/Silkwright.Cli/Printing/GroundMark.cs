using Silkwright.Estimates;
using Silkwright.Web.Look;

namespace Silkwright.Cli.Printing;

/// <summary>Where a number comes from, as a mark and in words.</summary>
internal static class GroundMark
{
    public static string Mark(Ground ground) => ground switch
    {
        Ground.MeasuredHere => "■",
        Ground.MeasuredElsewhere => "◧",
        Ground.Datasheet => "▤",
        Ground.Model => "≈",
        _ => "□",
    };

    public static string Both(Ground ground) => $"{Mark(ground)} {Grounds.Words(ground)}";
}
