namespace Silkwright.Exposure;

/// <summary>A way in which all strips of one day may have been read.</summary>
/// <param name="Slip">Share of readings that are slips. [1], 0 to 1; a wedge's slip may be any step.</param>
/// <param name="SideSlip">The same of the squeegee side. [1], 0 to 0.5: there it tells nothing.</param>
/// <param name="Hand">How far one wash-out, or a wedge that lay or was counted otherwise, moves every step of the day. [log exposure]</param>
internal sealed record ReadingWay(double Slip, double SideSlip, double Hand)
{
    /// <summary>A day whose strips agree.</summary>
    private static readonly ReadingWay Usual = new(StripNoise.Slip, StripNoise.Slip, StripNoise.WashOutHand);

    /// <summary>
    /// A day whose strips contradict each other: some strips were read wrongly, or many; or the wedge as a whole, or the squeegee side. One is as likely as the other before they are looked at.
    /// </summary>
    private static readonly IReadOnlyList<ReadingWay> Contradicted =
    [
        Usual with { Slip = StripNoise.SomeSlip, SideSlip = StripNoise.SomeSlip },
        Usual with { Slip = StripNoise.ManySlip, SideSlip = StripNoise.ManySlip },
        Usual with { Slip = StripNoise.SomeSlip, SideSlip = StripNoise.SomeSlip, Hand = StripNoise.WedgeAsAWhole },
        Usual with { Slip = StripNoise.SomeSlip, SideSlip = StripNoise.NoSense },
    ];

    internal static IReadOnlyList<ReadingWay> Of(bool contradicted) => contradicted ? Contradicted : [Usual];
}
