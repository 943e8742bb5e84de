using Silkwright.Statistics.Mixed;

namespace Silkwright.Coating.Learning;

/// <summary>What readings of some shops teach of any shop's coats, without the readings: docs/engines/coating.md, equations 21 to 23.</summary>
/// <remarks>
/// It holds what the readings alone tell, never what is believed before any, so that several add up and the belief comes in once, where they are used.
/// No name of a shop, person, trough or screen, no date and no thickness is in it.
/// </remarks>
public sealed record CoatExperience
{
    /// <summary>Fewer readings lie too open in what they taught.</summary>
    public const int LeastReadings = 10;

    /// <summary>The constants of the balance, then emulsions and meshes by name.</summary>
    public required IReadOnlyList<SharedEffect> Effects { get; init; }

    /// <summary>Inverse covariance of the effects, in standard deviations of what is believed of each, times the residual variance. Row by row, symmetric.</summary>
    public required IReadOnlyList<double> Precision { get; init; }

    /// <summary>The precision times the effects that the readings alone tell.</summary>
    public required IReadOnlyList<double> Pull { get; init; }

    /// <summary>Squares of all readings' distances from the balance over their own covariance.</summary>
    public required double Squares { get; init; }

    public required int Readings { get; init; }

    public required int Shops { get; init; }

    /// <summary>What is told of how unlike shops, operators, troughs, recipes and screens are: of the logarithm of the ratio to what is believed.</summary>
    public required IReadOnlyDictionary<string, RatioTold> Spreads { get; init; }

    /// <summary><see cref="CoatMarks"/> of the readings that were added up, so that none is counted twice. They tell nothing else.</summary>
    public required IReadOnlyList<string> Parts { get; init; }

    /// <summary>Groups whose spreads it may tell.</summary>
    public static IReadOnlyList<string> Groups { get; } = [.. CoatLevels.Terms.Where(term => !term.Shared).Select(term => term.Name)];

    /// <summary>Whether there is such an effect of all shops.</summary>
    public static bool Knows(SharedEffect effect)
    {
        ArgumentNullException.ThrowIfNull(effect);
        return effect.Group is "emulsion" or "mesh" || (effect.Group == CoatLevels.Constant && LiquidCoat.SharedNames.Contains(effect.Name));
    }

    /// <summary>Readings that are enough to hide each of them: more than there are effects to tell, and ten at least.</summary>
    public static int Needed(IReadOnlyList<CoatRead> reads) =>
        Math.Max(LeastReadings, 1 + LiquidCoat.SharedConstants + reads.Select(read => read.Coat.Emulsion.Id).Distinct().Count() + reads.Select(read => read.Coat.Mesh.Fabric.Name).Distinct().Count());

    /// <summary>What some readings teach of all shops.</summary>
    /// <param name="reads">As many as <see cref="Needed"/> tells, at least.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">There are too few readings.</exception>
    public static CoatExperience Of(IReadOnlyList<CoatRead> reads, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(reads);
        if (reads.Count < Needed(reads))
            throw new ArgumentException($"{reads.Count} readings would lie open in what they taught; {Needed(reads)} do not.", nameof(reads));
        return CoatHierarchy.Of(reads, cancel: cancel).Experience();
    }

    /// <summary>What a fit's rows tell of the effects of all shops.</summary>
    internal static CoatExperience Of(MixedFit fit, CoatLevels levels, IReadOnlyList<CoatRead> reads)
    {
        SharedEffect[] effects = [.. InOrder(levels.Shared())];
        var told = fit.Tell([.. effects.Select(levels.Place)]);
        var ratios = fit.TellRatios();
        return new CoatExperience
        {
            Effects = effects,
            Precision = told.Precision,
            Pull = told.Pull,
            Squares = told.Squares,
            Readings = reads.Count,
            Shops = levels.Count(CoatLevels.Shops),
            Spreads = Enumerable.Range(0, CoatLevels.Terms.Length).Where(t => !CoatLevels.Terms[t].Shared).ToDictionary(t => CoatLevels.Terms[t].Name, t => ratios[t]),
            Parts = CoatMarks.Of(reads),
        };
    }

    /// <summary>What all of them teach together.</summary>
    /// <exception cref="ArgumentException">There is none, or one part is there twice.</exception>
    public static CoatExperience Sum(IReadOnlyList<CoatExperience> some)
    {
        ArgumentNullException.ThrowIfNull(some);
        if (some.Count == 0 || some.SelectMany(one => one.Parts).GroupBy(part => part).Any(part => part.Count() > 1))
            throw new ArgumentException("There must be one at least, and no part twice.", nameof(some));
        SharedEffect[] effects = [.. InOrder(some.SelectMany(one => one.Effects).Distinct())];
        var (precision, pull) = (new double[effects.Length * effects.Length], new double[effects.Length]);
        foreach (var one in some)
        {
            int[] at = [.. one.Effects.Select(effect => Array.IndexOf(effects, effect))];
            for (var i = 0; i < at.Length; i++)
            {
                pull[at[i]] += one.Pull[i];
                for (var j = 0; j < at.Length; j++)
                    precision[(at[i] * effects.Length) + at[j]] += one.Precision[(i * at.Length) + j];
            }
        }

        return new CoatExperience
        {
            Effects = effects,
            Precision = precision,
            Pull = pull,
            Squares = some.Sum(one => one.Squares),
            Readings = some.Sum(one => one.Readings),
            Shops = some.Sum(one => one.Shops),
            Spreads = some.SelectMany(one => one.Spreads).GroupBy(told => told.Key, told => told.Value)
                .ToDictionary(group => group.Key, group => new RatioTold(group.Sum(told => told.Precision), group.Sum(told => told.Pull))),
            Parts = [.. some.SelectMany(one => one.Parts).Order(StringComparer.Ordinal)],
        };
    }

    /// <summary>Where each effect lies off what is believed of it, and how surely, in standard deviations of that belief.</summary>
    public IReadOnlyList<(SharedEffect Effect, double Deviations, double StandardError)> Shares()
    {
        var learnt = CoatHierarchy.Of([], this);
        return [.. Effects.Select(effect => learnt.Shared(effect) is var (deviations, error) ? (effect, deviations, error) : default)];
    }

    /// <summary>Constants as the balance has them, then emulsions and meshes by name.</summary>
    internal static IEnumerable<SharedEffect> InOrder(IEnumerable<SharedEffect> effects) => effects
        .OrderBy(effect => effect.Group switch { CoatLevels.Constant => 0, "emulsion" => 1, _ => 2 })
        .ThenBy(effect => effect.Group == CoatLevels.Constant ? LiquidCoat.SharedNames.IndexOf(effect.Name) : 0)
        .ThenBy(effect => effect.Name, StringComparer.Ordinal);

    /// <summary>What is believed of a group's ratio once this is known.</summary>
    internal RatioPrior Believed(string group, RatioPrior before)
    {
        if (before.Spread is not { } spread || !Spreads.TryGetValue(group, out var told))
            return before;
        var precision = (1 / (spread * spread)) + told.Precision;
        return new RatioPrior(Math.Exp(((Math.Log(before.Ratio) / (spread * spread)) + told.Pull) / precision), 1 / Math.Sqrt(precision));
    }
}
