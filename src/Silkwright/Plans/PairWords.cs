using System.Globalization;
using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>What two doubled or mirrored films mean, in words.</summary>
internal static class PairWords
{
    public static string Of(FilmPair pair)
    {
        var percent = pair.Resemblance.AlikePercent is { } alike ? alike.ToString("0", CultureInfo.InvariantCulture) : "";
        var turned = pair.Resemblance.Turn switch
        {
            FilmTurn.Mirrored => "mirrored left to right",
            FilmTurn.MirroredTopToBottom => "mirrored top to bottom",
            _ => "turned upside down",
        };
        return pair.Resemblance switch
        {
            { Turn: FilmTurn.None } =>
                $"{pair.First} and {pair.Second} hold the same image ({percent} % alike). Unless one is the other's underbase, a separation was output twice: output the missing one.",
            { Ground: ResemblanceGround.SameImage } =>
                $"{pair.First} is {pair.Second} {turned} ({percent} % alike). {Remedy}",
            { Ground: ResemblanceGround.Marks } =>
                $"The register marks of {pair.First} lie on those of {pair.Second} only when it is {turned}. {Remedy}",
            _ => $"{Say(pair)} only when it is {turned} ({percent} % of the smaller image). They may be meant to stand side by side; if not: {Remedy}",
        };
    }

    private const string Remedy = "Lay both on the light table with the emulsion side the same way, and output the wrong one again.";

    private static string Say(FilmPair pair) => $"The images of {pair.First} and {pair.Second} lie on each other";
}
