using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>What all shops that share learn together, and what each that does not learns out of its own readings alone.</summary>
internal sealed class SharingCoats
{
    private readonly CoatReadings taken;
    private readonly CoatExperience? elsewhere;
    private readonly CancellationToken cancel;
    private readonly Dictionary<string, CoatHierarchy> alone = [];

    /// <param name="taken">Readings of any shops.</param>
    /// <param name="elsewhere">What readings of yet other shops taught; none: these readings alone.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="InputProblemException">The experience was made of some of these readings.</exception>
    public SharingCoats(CoatReadings taken, CoatExperience? elsewhere, CancellationToken cancel)
    {
        (this.taken, this.elsewhere, this.cancel) = (taken, elsewhere, cancel);
        _ = CoatExperienceQuestion.Beside([.. taken.Used.Select(row => new CoatRead(row.Coat, row.EomUm!.Value))], elsewhere);
        Shared = CoatHierarchy.Of(taken.Shared, elsewhere, cancel);
    }

    public CoatHierarchy Shared { get; }

    /// <summary>What answers for a shop.</summary>
    public CoatHierarchy Of(string shop)
    {
        if (!taken.OptedOut.Contains(shop))
            return Shared;
        if (!alone.TryGetValue(shop, out var own))
            alone[shop] = own = CoatHierarchy.Of(taken.Own(shop), elsewhere, cancel);
        return own;
    }
}
