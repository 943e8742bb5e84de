using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Film.Readers;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Film.Measuring;

/// <summary>What the question about films asks for beside the files, the same in the shell and over HTTP.</summary>
/// <param name="Options">What the files cannot say.</param>
/// <param name="Frame">The frame they are to fit; none where it is not given.</param>
/// <param name="Mesh">The mesh that is to hold them; none where it is not given.</param>
/// <param name="At">The spot that is looked at, from the top left; none where none is asked for. [mm]</param>
public sealed record FilmQuestion(FilmOptions Options, Frame? Frame, WovenMesh? Mesh, (double XMm, double YMm)? At = null)
{
    private static readonly QuantityField Dpi = new("dpi", QuantityKind.Number, "resolution that overrules the film's own, in pixels an inch; a PDF is drawn at 1200 when it is not given")
    {
        Sample = "1200",
        Least = FilmLimits.LeastDpi,
        Most = FilmLimits.MostDpi,
    };

    private static readonly ChoiceField Polarity = ChoiceField.Of<FilmPolarity>("polarity", "what prints: black on a positive (when not given), clear on a negative");

    private static readonly QuantityField Page = new("page", QuantityKind.Number, "page of a PDF, the first when not given")
    {
        Sample = "2",
        Least = 1,
        Most = MostPages,
        Whole = true,
    };

    private static readonly QuantityField FrameWidth = new("frame-width", QuantityKind.Length, "inside width of the frame the films are to fit")
    {
        Above = 0,
        Most = MostFrameMm,
    };

    private static readonly QuantityField FrameHeight = FrameWidth with { Name = "frame-height", Meaning = "its inside height" };

    internal static readonly TextField MeshText = new("mesh", "a mesh: what of the films is finer than it can hold is counted", "61/cm,64um");

    private static readonly TextField Spot = new("at", "a spot, so far from the left and from the top: how wide image or gap is there", "12.5mm,40mm");

    /// <summary>Common practice, no source: no frame of a textile press is 5 m long.</summary>
    private const double MostFrameMm = 5000;

    /// <summary>Our own choice: more separations than any job has.</summary>
    private const int MostPages = 10_000;

    public static IReadOnlyList<QuestionField> Fields => [Dpi, Polarity, Page, MeshText, FrameWidth, FrameHeight, Spot];

    /// <exception cref="InputProblemException">Something typed is wrong.</exception>
    public static FilmQuestion Read(GivenTexts given)
    {
        ArgumentNullException.ThrowIfNull(given);
        var options = new FilmOptions(given.Read(Dpi), given.Read<FilmPolarity>(Polarity) ?? FilmPolarity.Positive, Page: given.Read(Page) is >= 1 and <= MostPages and var page ? (int)page : 1);
        var (width, height) = (given.Read(FrameWidth), given.Read(FrameHeight));
        if (width is null != height is null)
            given.Problems.Add("A frame has two sides, and one is given.", given.Where(width is null ? FrameWidth : FrameHeight), "Give both, for example 580mm and 760mm.");
        var (mesh, at) = (MeshOf(given), SpotOf(given));
        given.ThrowIfAny();
        return new FilmQuestion(options, width is { } w && height is { } h ? new Frame { InsideWidthMm = w, InsideHeightMm = h } : null, mesh, at);
    }

    private static (double XMm, double YMm)? SpotOf(GivenTexts given)
    {
        if (given.Read(Spot) is not { } text)
            return null;
        var parts = text.Split(',');
        if (parts.Length != 2)
        {
            given.Problems.Add($"'{NearName.Shown(text)}' is not a spot.", given.Where(Spot), $"Write how far from the left and how far from the top with a comma between, for example {Spot.Example}.");
            return null;
        }

        var (x, y) = (Distance(parts[0]), Distance(parts[1]));
        return x is { } right && y is { } down ? (right, down) : null;

        double? Distance(string part) => QuantityText.Read(part, QuantityKind.Length, given.Where(Spot), given.Problems);
    }

    /// <summary>The mesh that is typed, <c>61/cm,64um</c> or <c>61/64</c>; none where none is.</summary>
    internal static WovenMesh? MeshOf(GivenTexts given)
    {
        if (given.Read(MeshText) is not { } text)
            return null;
        if (MeshLabel.Read(text) is { } named)
            return WovenMesh.Of(named);
        var parts = text.Split(',');
        if (parts.Length != 2)
        {
            given.Problems.Add(
                $"'{NearName.Shown(text)}' is not a mesh.", given.Where(MeshText), $"Write its count and its thread with a comma between, for example {MeshText.Example}; or {MeshLabel.Remedy}.");
            return null;
        }

        try
        {
            return MeshQuestion.Answer(new GivenTexts(
                new Dictionary<string, string> { [MeshQuestion.Count.Name] = parts[0], [MeshQuestion.Thread.Name] = parts[1] }, given.Where(MeshText) + ", "));
        }
        catch (InputProblemException fault)
        {
            given.Problems.AddRange(fault.Problems);
            return null;
        }
    }
}
