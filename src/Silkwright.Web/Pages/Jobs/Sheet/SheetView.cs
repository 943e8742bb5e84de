using Silkwright.Contracts;
using Silkwright.Plans;
using Silkwright.Web.Jobs;
using Silkwright.Web.Look;

namespace Silkwright.Web.Pages.Jobs.Sheet;

/// <summary>A plan and what of it a person is looking at. Every choice is in the address, so that it works without script.</summary>
/// <param name="Plan">The whole plan.</param>
/// <param name="Index">The colour in view, from 0.</param>
/// <param name="Chosen">The station whose detail is open.</param>
/// <param name="Read">Units read first.</param>
/// <param name="JobUrl">Address of the job's page.</param>
/// <param name="FilmUrl">Address of this colour's film, for its pictures; none where the film's pixels are not kept.</param>
/// <param name="Place">The place on the film that is looked at, from 1; 0: none.</param>
public sealed record SheetView(
    StencilPlan Plan, int Index, Station Chosen, UnitSystem Read, string JobUrl, string? FilmUrl = null, int Place = 0)
{
    /// <summary>What is at the spot of the film that is looked at.</summary>
    public FilmLook Look { get; init; } = FilmLook.None;

    /// <summary>Only the panel's red is sent.</summary>
    public bool SafeLight { get; init; }

    public ColourPlan Colour => Plan.Colours[Index];

    public string ColourUrl(int index) => Url(index, Chosen, 0);

    public string StationUrl(Station station) => Url(Index, station, 0);

    public string PlaceUrl(int place) => Url(Index, Station.Film, place);

    /// <summary>A spot of the film, so far from its left and from its top.</summary>
    public string SpotUrl(string x, string y) => Url(Index, Station.Film, $"&x={x}&y={y}");

    private string Url(int index, Station station, int place) => Url(index, station, place > 0 ? $"&place={place}" : "");

    private string Url(int index, Station station, string more) => $"{JobUrl}?colour={index + 1}&station={Names.Of(station)}{more}#bench";
}
