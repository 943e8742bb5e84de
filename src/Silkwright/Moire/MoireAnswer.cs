using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Moire;

/// <summary>How a halftone beats with a mesh and a knit, and what would beat less.</summary>
public sealed record MoireAnswer
{
    public required MoireCase Asked { get; init; }

    /// <summary>The plainest first.</summary>
    public required IReadOnlyList<MoirePattern> Patterns { get; init; }

    /// <summary>How plain the plainest may become within the doubts about mesh and film. [1], 0 to 1.</summary>
    public required double VisibilityAtWorst { get; init; }

    /// <summary>Angles of the film that beat least; the quietest first.</summary>
    public required IReadOnlyList<MoireChoice> BestAngles { get; init; }

    /// <summary>Rulings near the one asked that beat least at this angle; the quietest first.</summary>
    public required IReadOnlyList<MoireChoice> BestRulings { get; init; }

    /// <summary>Meshes on hand with this ruling and angle; the quietest first.</summary>
    public IReadOnlyList<MoireChoice> Meshes { get; init; } = [];

    public IReadOnlyList<Note> Notes { get; init; } = [];

    /// <param name="asked">The halftone, the mesh and the knit.</param>
    /// <param name="onHand">Other meshes to hold it against.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is not a positive number, or threads would overlap.</exception>
    public static MoireAnswer Of(MoireCase asked, IReadOnlyList<MeshFabric>? onHand = null) => new()
    {
        Asked = asked,
        Patterns = Beats.Of(asked),
        VisibilityAtWorst = MoireSearch.AsAsked(asked).VisibilityAtWorst,
        BestAngles = MoireSearch.BestAngles(asked),
        BestRulings = MoireSearch.BestRulings(asked),
        Meshes = onHand is { Count: > 0 } ? MoireSearch.Meshes(asked, onHand) : [],
        Notes = NotesOn(asked),
    };

    private static List<Note> NotesOn(MoireCase asked)
    {
        var notes = new List<Note>
        {
            new("Periods and directions are geometry. Visibility is a model: strengths of the overtones, the eye, and a scale of our own judgement; 0.5 is just seen.", Ground.Model),
            new(string.Create(CultureInfo.InvariantCulture, $"A choice is judged at its worst with the mesh's count within {MoireSearch.CountDoubt:0 %} and the film within {MoireSearch.AngleDoubtDegrees:0} degree of what is named."), Ground.CommonPractice),
        };
        if (Beats.Standing(asked) is [var standing, ..])
        {
            notes.Add(new Note(
                $"{MoireWords.Orders(standing)} fall on each other: with these exact figures their beat is longer than any print, and the least stretch of the mesh makes it a plain one."));
        }

        if (asked.KnitWalesPerCm is null)
            notes.Add(new Note("The garment's knit is not given: what it beats with is not looked at."));
        return notes;
    }
}
