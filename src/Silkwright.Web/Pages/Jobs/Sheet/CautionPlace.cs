using Silkwright.Estimates;

namespace Silkwright.Web.Pages.Jobs.Sheet;

/// <summary>The station that a caution stands before.</summary>
public static class CautionPlace
{
    private static readonly (string Word, Station Station)[] Steps =
    [
        ("expos", Station.Expose), ("wash", Station.Expose), ("develop", Station.Expose), ("harden", Station.Expose), ("lamp", Station.Expose),
        ("dry", Station.Dry),
        ("mix", Station.Coat), ("sensit", Station.Coat), ("coat", Station.Coat), ("degreas", Station.Mesh), ("mesh", Station.Mesh),
        ("print", Station.Print), ("cur", Station.Print), ("reclaim", Station.Print), ("ink", Station.Print),
    ];

    /// <summary>By the words of its step; one whose step says nothing known stands before printing.</summary>
    public static Station Of(Caution caution)
    {
        foreach (var (word, station) in Steps)
        {
            if (caution.Step.Contains(word, StringComparison.OrdinalIgnoreCase))
                return station;
        }

        return Station.Print;
    }
}
