using System.Globalization;

namespace Silkwright.Moire;

/// <summary>A beat in words.</summary>
public static class MoireWords
{
    /// <summary>Which overtones make it: "ruling 4, 0 and thread 1, 0".</summary>
    public static string Orders(MoirePattern pattern)
    {
        var parts = new List<string>();
        Add("ruling", pattern.Ruling);
        Add("thread", pattern.Thread);
        Add("knit", pattern.Knit);
        return string.Join(" and ", parts);

        void Add(string of, OrderPair? orders)
        {
            if (orders is { } pair)
                parts.Add(string.Create(CultureInfo.InvariantCulture, $"{of} {pair.First},{pair.Second}").Replace('-', '−'));
        }
    }

    /// <summary>How plainly it is seen.</summary>
    /// <param name="visibility">[1], 0 to 1.</param>
    public static string Seen(double visibility) => visibility switch
    {
        >= 0.75 => "plain",
        >= Visibility.JustSeen => "seen by who looks for it",
        >= 0.25 => "hardly seen",
        _ => "not seen",
    };
}
