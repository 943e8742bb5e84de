using Silkwright.Estimates;

namespace Silkwright.Web.Look;

/// <summary>The words beside each mark of ground.</summary>
public static class Grounds
{
    public static IReadOnlyList<Ground> All { get; } = Enum.GetValues<Ground>();

    public static string Words(Ground ground) => ground switch
    {
        Ground.MeasuredHere => "measured here",
        Ground.MeasuredElsewhere => "measured elsewhere",
        Ground.Datasheet => "datasheet",
        Ground.Model => "model",
        _ => "common practice",
    };
}
