using Silkwright.Artwork;
using Silkwright.Plans;

namespace Silkwright.Web.Pages.Jobs.Sheet;

/// <summary>The places of a film that its page marks.</summary>
public static class FilmPlaces
{
    /// <summary>Marks beyond this many would cover the film.</summary>
    private const int MostMarks = 40;

    /// <summary>What is too fine for the mesh, finest first.</summary>
    public static IReadOnlyList<FilmPlace> Marked(ColourPlan plan) => [.. plan.Detail.TooFine.Take(MostMarks)];

    /// <summary>The marked place of a number, from 1; none where there is no such mark.</summary>
    public static FilmPlace? Chosen(ColourPlan plan, int number) =>
        number >= 1 && Marked(plan) is var marked && number <= marked.Count ? marked[number - 1] : null;
}
