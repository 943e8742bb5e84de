namespace Silkwright.Choosing;

/// <summary>The parts of a cost at one value for each input: docs/engines/choosing.md, equations 1 to 4. [currency]</summary>
/// <param name="screens">Screens made up front.</param>
/// <param name="amounts">By <see cref="CostInput"/>.</param>
internal readonly struct CostPoint(int screens, IReadOnlyList<double> amounts)
{
    public double OnScreen => Poured + (screens * Amount(CostInput.FilmPerScreen));

    public double Coating => Hands(CostInput.CoatingMinutes);

    public double Drying => Hands(CostInput.DryingMinutes) + (screens * Amount(CostInput.DryingPlacePerScreen));

    public double Exposing => Hands(CostInput.ExposingMinutes);

    public double Making => Hands(CostInput.MakingMinutes);

    public double Finish => Hands(CostInput.FinishMinutes) + (screens * Amount(CostInput.FinishPerScreen));

    public double Reclaim => Hands(CostInput.ReclaimMinutes) + (screens * Amount(CostInput.ReclaimPerScreen));

    public double Labour => Coating + Drying + Exposing + Making + Finish + Reclaim;

    public double Waste => Stock.Waste.Beside(Poured, Amount(CostInput.WastePercent));

    public double Risk
    {
        get
        {
            var failures = Amount(CostInput.ExpectedFailures);
            var remade = ExpectedBeyond(failures, screens - 1);
            return (remade * (OneScreen + Amount(CostInput.StopForRemake)))
                + ((failures - remade) * Amount(CostInput.StopForSpare))
                + Unprinted;
        }
    }

    /// <summary>Screens made again before they print.</summary>
    public double Unprinted => screens * Amount(CostInput.RemakeChance) * OneScreen;

    public double Total => OnScreen + Labour + Waste + Risk;

    /// <summary>All of them in the order above, the total last.</summary>
    public double[] Parts() => [OnScreen, Coating, Drying, Exposing, Making, Finish, Reclaim, Labour, Waste, Risk, Unprinted, Total];

    private double OneScreen => (OnScreen + Labour + Waste) / screens;

    /// <summary>What comes out of a container that may be over before it is used up; a film laid with emulsion is cut to size.</summary>
    private double Poured => screens * Amount(CostInput.GramsPerScreen) / 1000 * Amount(CostInput.PricePerKg);

    private double Amount(CostInput input) => amounts[(int)input];

    private double Hands(CostInput minutes) => screens * Amount(minutes) * Amount(CostInput.LabourPerHour) / 60;

    /// <summary>Failures beyond the spares: E[max(0, N − spares)] for a Poisson count N, which errs on the side of more.</summary>
    private static double ExpectedBeyond(double expectedFailures, int spares)
    {
        if (expectedFailures <= 0)
            return 0;
        var beyond = expectedFailures;
        var none = Math.Exp(-expectedFailures);
        var (term, reached) = (none, none);
        for (var count = 0; count < spares; count++)
        {
            beyond -= 1 - reached;
            term *= expectedFailures / (count + 1);
            reached += term;
        }

        return Math.Max(0, beyond);
    }
}
