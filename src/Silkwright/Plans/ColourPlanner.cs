using Silkwright.Artwork;
using Silkwright.Choosing;
using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Estimates;
using Silkwright.Ink;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>Plans one colour: mesh, then the emulsions against each other, then what the winner needs at every station.</summary>
internal static class ColourPlanner
{
    /// <summary>The plan of one colour, and the contest that settled it.</summary>
    /// <param name="colour">The colour.</param>
    /// <param name="job">Its job.</param>
    /// <param name="shop">The shop, filled.</param>
    /// <param name="coats">What the shop's gauge readings teach, where it is learnt already: the same for every colour.</param>
    public static (ColourPlan Plan, EmulsionContest Contest, ColourBrief Brief) Plan(JobColour colour, Job job, Shop shop, CoatHierarchy? coats = null)
    {
        var needs = ColourNeeds.Of(colour);
        var dark = IsDark(job.Garment);
        var wanted = InkVolumeWanted.Cm3PerM2(colour.Ink, colour.Role == InkRole.Underbase, needs.RulingLpi is not null, dark);
        var meshes = MeshChoice.Rank(shop.Meshes, needs, wanted);
        var carried = Carried(meshes, needs, shop.Frames);
        var mesh = carried.Count > 0 ? carried[0] : meshes[0];
        var (frame, _) = FrameChoice.For(mesh.Mesh.Fabric, needs, shop.Frames);
        var brief = new ColourBrief
        {
            Colour = colour,
            Needs = needs,
            Mesh = mesh,
            Frame = frame,
            Impressions = checked(job.Run * colour.ImpressionsPerGarment),
            On = job.Date,
            Shop = shop with { Emulsions = LaidFilms.Offer(shop, colour.Ink, job.Date) },
            Lives = ShopLives.Of(shop),
            Coats = coats ?? ShopCoats.Of(shop),
        };
        var detail = DetailCheck.Of(mesh, meshes, carried, needs);
        var contest = EmulsionContest.Of(brief);
        var winner = contest.Winner;
        var plan = new ColourPlan
        {
            Colour = colour,
            Needs = needs,
            Frame = frame,
            Mesh = mesh.Mesh,
            Detail = detail,
            Emulsion = winner?.Emulsion,
            NearestFix = contest.NearestFix(),
            Coat = winner?.Coat,
            Trough = winner?.Trough,
            Drying = winner?.Drying,
            Exposure = winner?.Exposure,
            Lamp = winner?.Lamp,
            Finish = winner?.Finish ?? StencilFinish.None,
            Finishes = winner?.Finishes ?? [],
            Ink = winner is null ? null : InkFor(brief, winner.Coat),
            Life = winner?.Life,
            Spares = winner?.Spares,
            Cost = winner?.Cost,
            Cautions = Cautions.For(winner?.Emulsion, colour.Ink, winner?.Finish ?? StencilFinish.None),
            Because = Reasons.For(brief, meshes, detail, contest),
            Beaten = contest.Beaten(),
            Notes = NotesOf(needs, mesh, winner),
        };
        return (plan, contest, brief);
    }

    /// <summary>A garment is dark when the job says so, or when its colour's name does.</summary>
    public static bool IsDark(Garment garment)
    {
        string[] darkNames = ["black", "navy", "dark", "charcoal", "maroon", "brown", "forest", "bottle", "royal", "purple", "indigo"];
        return garment.Dark ?? (garment.Colour is { } colour
            && darkNames.Any(name => colour.Contains(name, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>The meshes that some frame carries the film on, the best first; all of them where the shop named no frames.</summary>
    private static IReadOnlyList<MeshCandidate> Carried(
        IReadOnlyList<MeshCandidate> meshes, ArtworkNeeds needs, IReadOnlyList<Frame> frames) => frames.Count == 0
        ? meshes
        : [.. meshes.Where(mesh => FrameChoice.For(mesh.Mesh.Fabric, needs, frames) is { Frame: not null, Fits: not false })];

    private static InkResult InkFor(ColourBrief brief, CoatPrediction coat) => InkDeposit.Of(new InkCase
    {
        Mesh = brief.Mesh.Mesh.Fabric,
        EomUm = coat.EomUm,
        Ink = brief.Colour.Ink,
        CoveragePercent = brief.Needs.CoveragePercent,
        AreaCm2 = brief.Needs.FilmAreaCm2,
        FinestLineUm = brief.Needs.FinestLineUm?.Value,
        Impressions = brief.Impressions,
    });

    private static Note[] NotesOf(ArtworkNeeds needs, MeshCandidate mesh, StencilCandidate? winner)
    {
        IEnumerable<Note> notes = needs.Notes.Concat(mesh.Mesh.Notes);
        if (winner is not null)
        {
            notes = notes
                .Concat(winner.Lot.Notes)
                .Concat(winner.Coat.Notes)
                .Concat(winner.Drying.Notes)
                .Concat(winner.Exposure.Notes)
                .Concat(winner.Life.Notes);
        }

        return [.. notes.Distinct()];
    }
}
