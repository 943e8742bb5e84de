namespace Silkwright.Statistics.Mixed;

/// <summary>A linear mixed model: y = X β + Σ Z b + e, with b and e normal and independent.</summary>
public sealed record MixedModel
{
    /// <summary>y, one a row.</summary>
    public required IReadOnlyList<double> Response { get; init; }

    /// <summary>Columns of X, none a combination of others.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> Fixed { get; init; }

    /// <summary>At least one.</summary>
    public required IReadOnlyList<RandomTerm> Random { get; init; }

    /// <summary>Each row's weight: its residual has the residual variance divided by it. None: 1 each. [1], above 0.</summary>
    public IReadOnlyList<double>? Weights { get; init; }

    /// <summary>What is believed of the residual variance; none: the rows alone tell.</summary>
    public ResidualPrior? Residual { get; init; }

    /// <summary>What rows that are not here tell of effects of terms that cross; none: these rows alone.</summary>
    public EffectInformation? Elsewhere { get; init; }

    /// <summary>Rows that tell of the residual variance, and rows' worth of belief.</summary>
    internal double Freedom => Response.Count - Fixed.Count + (Residual?.Freedom ?? 0) + (Elsewhere?.Rows ?? 0);

    /// <summary>Checks sizes and ranges.</summary>
    /// <exception cref="ArgumentException">Columns of unequal lengths, a level that is not there, a number that is none, or fewer rows than fixed effects and one.</exception>
    internal void Check()
    {
        var rows = Response.Count;
        Require(Random.Count > 0, "A mixed model needs at least one random effect.");
        Require(Freedom > 0 && rows >= Fixed.Count, "There must be more rows than fixed effects, or a belief of the residual variance.");
        Require(Residual is null or { Variance: > 0 and < double.PositiveInfinity, Freedom: > 0 and < double.PositiveInfinity }, "A belief of the residual variance must be above 0.");
        Require(Fixed.All(column => column.Count == rows) && (Weights is null || Weights.Count == rows), "Every column must have a value a row.");
        Require(Response.All(double.IsFinite) && Fixed.All(column => column.All(double.IsFinite)), "Every value must be a number.");
        Require(Weights is null || Weights.All(weight => weight > 0 && double.IsFinite(weight)), "Weights must be above 0.");
        Require(Random.Any(term => !term.Crosses), "One term at least must not cross the others.");
        if (Elsewhere is { } told)
        {
            Require(told.Effects.All(effect => Random[effect.Term] is { Crosses: true, Width: 1 } term && effect.Level < term.Levels), "Rows elsewhere may tell of effects of crossing terms alone.");
            Require(told.Pull.Count == told.Effects.Count && told.Precision.Count == told.Effects.Count * told.Effects.Count, "Rows elsewhere must tell of every pair of their effects.");
            Require(told.Precision.All(double.IsFinite) && told.Pull.All(double.IsFinite) && told is { Squares: >= 0 and < double.PositiveInfinity, Rows: >= 0 and < double.PositiveInfinity }, "What rows elsewhere tell must be numbers.");
        }

        foreach (var term in Random)
        {
            Require(term.Width > 0 && term.LevelOfRow.Count == rows && term.Columns.All(column => column.Count == rows), $"{term.Name}: every column must have a value a row.");
            Require(term.LevelOfRow.All(level => level >= 0 && level < term.Levels), $"{term.Name}: a row names a level that is not there.");
            Require(
                term.Prior is null or { Ratio: > 0 and < double.PositiveInfinity, Spread: null or (> 0 and < double.PositiveInfinity) } && (term.Prior is null || term.Width == 1),
                $"{term.Name}: a belief of the spread is for levels of one effect, and above 0.");
            Require(term.Columns.All(column => column.All(double.IsFinite)), $"{term.Name}: every value must be a number.");
        }
    }

    private static void Require(bool holds, string message)
    {
        if (!holds)
            throw new ArgumentException(message);
    }
}
