using Silkwright.Emulsion;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>What is known of the emulsions compared and yet not reckoned with, and why: nobody should think it was.</summary>
internal static class NotReckonedWith
{
    /// <summary>More names than this are counted.</summary>
    private const int MostNames = 3;

    public static IReadOnlyList<string> For(EmulsionContest contest, Shop shop)
    {
        StencilEmulsion[] parts = [.. contest.Allowed.SelectMany(candidate => Parts(candidate.Emulsion)).DistinctBy(part => part.Id)];
        var told = new List<string>();
        Tell(part => part.ViscosityPaS is not null, "viscosity", "how much thicker a stiffer emulsion lies depends on edge, speed and hand, and no figure for it is known; gauge readings of the coat hold it all");
        if (shop.Lamps.All(lamp => lamp.IrradianceMwPerCm2 is null))
            Tell(part => part.CriticalDoseMjPerCm2 is not null, "critical dose", "nobody has read the lamp at its glass with a radiometer, and a dose without one gives no time");
        if (shop.PressWash is null)
            Tell(part => part.ResistsCleaner is not null, "resistance to cleaners", "it is not said what screens are wiped with on press");
        Tell(part => part is { SensitiveFromNm: null, SensitiveToNm: not null } or { SensitiveFromNm: not null, SensitiveToNm: null }, "sensitive band", "only one of its ends is told");
        Tell(part => part is { DensityGPerCm3: not null, SolidsPercent: null }, "density", "without its solids it says nothing of the coat");
        return told;

        void Tell(Func<StencilEmulsion, bool> isKnown, string what, string why)
        {
            string[] names = [.. parts.Where(isKnown).Select(part => part.Id)];
            if (names.Length == 0)
                return;
            var more = names.Length > MostNames ? $" and {names.Length - MostNames} more" : "";
            told.Add($"The {what} of {string.Join(", ", names.Take(MostNames))}{more}: {why}.");
        }
    }

    private static StencilEmulsion[] Parts(StencilEmulsion emulsion) =>
        emulsion.LaidWith is { } laying ? [emulsion with { LaidWith = null, Id = emulsion.ShelfId }, laying] : [emulsion];
}
