using Silkwright.Estimates;
using Silkwright.Moire;

namespace Silkwright.Plans;

/// <summary>How a colour's halftone beats with its mesh, and what would beat less.</summary>
public sealed record MoireVerdict
{
    private const double LinesPerInchPerCm = 2.54;

    /// <summary>The halftone and the mesh; of several halftones on a film, the one that beats most plainly.</summary>
    public required MoireChoice AsPlanned { get; init; }

    /// <summary>Nobody said at which angle the halftone stands.</summary>
    public bool AngleAssumed { get; init; }

    /// <summary>An angle that beats less; none where nothing is seen, or no angle helps.</summary>
    public MoireChoice? Angle { get; init; }

    /// <summary>A ruling that beats less; none where nothing is seen, an angle is enough, or no ruling near helps.</summary>
    public MoireChoice? Ruling { get; init; }

    public bool IsSeen => AsPlanned.VisibilityAtWorst >= Visibility.JustSeen;

    /// <summary>With its figures, in one or two sentences.</summary>
    public string Sentence
    {
        get
        {
            var beat = AsPlanned.Pattern is { } plainest ? $"every {Millimetres(plainest)}" : "hardly at all";
            var told = $"The halftone of {Lpi(AsPlanned)} at {Figures.Plain(AsPlanned.AngleDegrees)}° beats with mesh {AsPlanned.Mesh.Name} {beat}: visibility {Figures.Plain(AsPlanned.VisibilityAtWorst, 2)} at worst, where 0.5 is just seen.";
            if (!IsSeen)
                return told;
            var ways = new List<string>();
            if (Angle is { } angle)
                ways.Add($"a film made at {Figures.Plain(angle.AngleDegrees)}° ({Figures.Plain(angle.VisibilityAtWorst, 2)})");
            if (Ruling is { } ruling)
                ways.Add($"{Lpi(ruling)} ({Figures.Plain(ruling.VisibilityAtWorst, 2)})");
            return ways.Count == 0
                ? $"{told} No angle or ruling near helps: more threads to a line would."
                : $"{told} Less plain: {string.Join(", or ", ways)}.";
        }
    }

    private static string Lpi(MoireChoice choice) =>
        $"{Figures.Exact(Math.Round(choice.RulingPerCm * LinesPerInchPerCm, 1))} lines/in ({Figures.Plain(choice.RulingPerCm)} /cm)";

    private static string Millimetres(MoirePattern beat) => $"{Figures.TwoDigits(beat.Vector.PeriodMm)} mm ({Figures.TwoDigits(beat.Vector.PeriodMm / 25.4)} in)";
}
