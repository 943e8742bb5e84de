using Silkwright.Coating.Learning;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>What shops' readings teach, made to be given to other shops: <c>coat experience</c>.</summary>
public static class CoatExperienceQuestion
{
    private static readonly Note WhatIsInIt = new("In it are the effects of all shops, how unlike groups are, and how many readings and shops taught it; no reading, date, or name of a shop, person, trough or screen. Emulsions and meshes are named.");

    /// <param name="readings">Readings of any shops; none: only the files are added up.</param>
    /// <param name="without">Shops that share nothing.</param>
    /// <param name="files">Experience made before, each with where it came from.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">There is nothing to share, too little to hide it, or one part twice.</exception>
    public static CoatExperienceAnswer Answer(
        IReadOnlyList<CoatRow>? readings, IReadOnlyCollection<string> without, IReadOnlyList<(string Where, CoatExperience Experience)> files, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(files);
        if (readings is null && files.Count == 0)
            throw new InputProblemException(new Problem("There is nothing to make experience of.", "readings", "Give a table of readings, a shop, or files of experience."));
        if (readings is null)
            return new CoatExperienceAnswer(Together(files)!, [], [WhatIsInIt]);
        var taken = new CoatReadings(readings, without);
        if (taken.Used.Count > 0 && taken.Shared.Count == 0)
            throw new InputProblemException(new Problem("Every shop of these readings shares nothing.", "without", "Nothing is made of them. They may still use what others share."));
        var own = Made(taken.Shared, "readings", cancel);
        return new CoatExperienceAnswer(Together([("readings", own), .. files])!, taken.Flags, [WhatIsInIt, .. CoatNotes.Of(taken, [])]);
    }

    /// <summary>What one shop's own readings teach others.</summary>
    /// <param name="shop">As it is told.</param>
    /// <param name="files">Experience to add to it.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The shop shares nothing, or has too few readings to hide them.</exception>
    public static CoatExperienceAnswer Of(Shop shop, IReadOnlyList<(string Where, CoatExperience Experience)> files, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(shop);
        ArgumentNullException.ThrowIfNull(files);
        if (!shop.SharesExperience)
            throw new InputProblemException(new Problem($"{shop.Name} shares nothing.", "shop: sharesExperience", "Nothing is made of its readings. It may still use what others share; take sharesExperience: false out of its document to share again."));
        return new CoatExperienceAnswer(Together([("the shop's own", Made(LearntShopCoats.ReadsOf(shop), "shop: readings", cancel)), .. files])!, [], [WhatIsInIt]);
    }

    /// <summary>All of some files added up; none where there is none.</summary>
    /// <exception cref="InputProblemException">One part is in two of them.</exception>
    public static CoatExperience? Together(IReadOnlyList<(string Where, CoatExperience Experience)> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var problems = new ProblemList();
        var seen = new Dictionary<string, string>();
        foreach (var (where, experience) in files)
        {
            if (experience.Parts.Select(part => seen.TryGetValue(part, out var before) ? before : null).FirstOrDefault(before => before is not null) is { } other)
                problems.Add($"What {where} holds, or some of it, is in {other} too.", where, "Leave one of the two out: readings would count twice.");
            foreach (var part in experience.Parts)
                _ = seen.TryAdd(part, where);
        }

        problems.ThrowIfAny();
        return files.Count == 0 ? null : CoatExperience.Sum([.. files.Select(file => file.Experience)]);
    }

    /// <summary>Experience that readings are to stand beside; none where none is given.</summary>
    /// <exception cref="InputProblemException">It was made of them, or of some of them.</exception>
    public static CoatExperience? Beside(IReadOnlyList<CoatRead> reads, CoatExperience? elsewhere) =>
        elsewhere?.Parts.Intersect(CoatMarks.Of(reads)).Any() != true
            ? elsewhere
            : throw new InputProblemException(new Problem("The experience holds what some of these readings taught.", "experience", "They would count twice: give what the others alone taught, or leave these readings out."));

    /// <summary>A shop that starts from experience.</summary>
    /// <inheritdoc cref="Beside(IReadOnlyList{CoatRead}, CoatExperience)"/>
    public static Shop Beside(Shop shop, CoatExperience elsewhere) => shop with { Experience = Beside(LearntShopCoats.ReadsOf(shop), elsewhere) };

    private static CoatExperience Made(IReadOnlyList<CoatRead> reads, string where, CancellationToken cancel)
    {
        var needed = CoatExperience.Needed(reads);
        return reads.Count >= needed
            ? CoatExperience.Of(reads, cancel)
            : throw new InputProblemException(new Problem($"{reads.Count} readings would lie open in what they taught.", where, $"Give {needed} or more: more than there are constants, emulsions and meshes to tell of, and {CoatExperience.LeastReadings} at least."));
    }
}
