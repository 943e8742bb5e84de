namespace Silkwright.Exposure;

/// <summary>A way in which all strips of one day may have been read.</summary>
/// <param name="WedgeSlip">Share of the wedge's readings that are slips, and may be any step. [1], 0 to 1: there the wedge tells nothing.</param>
/// <param name="SideSlip">The same of the squeegee side. [1], 0 to 0.5: half of what tells nothing is right.</param>
/// <param name="DetailSlip">The same of lines and gaps.</param>
/// <param name="Hand">How far one wash-out, or a wedge that lay or was counted otherwise, moves every step of the day. [log exposure]</param>
internal sealed record ReadingWay(double WedgeSlip, double SideSlip, double DetailSlip, double Hand)
{
    private const double TellsNothing = 1;
    private const double YesOrNoTellsNothing = 0.5;

    /// <summary>A day whose strips agree.</summary>
    internal static readonly ReadingWay Usual = new(StripNoise.Slip, StripNoise.Slip, StripNoise.Slip, StripNoise.WashOutHand);

    private static readonly ReadingWay SomeWrong = Usual with { WedgeSlip = StripNoise.SomeSlip, SideSlip = StripNoise.SomeSlip, DetailSlip = StripNoise.SomeSlip };

    /// <summary>
    /// A day whose strips contradict each other: some strips were read wrongly, or many; or the wedge as a whole, or the squeegee side, or nothing of that day is worth anything. One is as likely as
    /// the other before they are looked at.
    /// </summary>
    private static readonly IReadOnlyList<ReadingWay> Contradicted =
    [
        SomeWrong,
        Usual with { WedgeSlip = StripNoise.ManySlip, SideSlip = StripNoise.ManySlip, DetailSlip = StripNoise.ManySlip },
        SomeWrong with { Hand = StripNoise.WedgeAsAWhole },
        SomeWrong with { SideSlip = YesOrNoTellsNothing },
        Usual with { WedgeSlip = TellsNothing, SideSlip = YesOrNoTellsNothing, DetailSlip = YesOrNoTellsNothing },
    ];

    internal static IReadOnlyList<ReadingWay> Of(bool contradicted) => contradicted ? Contradicted : [Usual];
}
