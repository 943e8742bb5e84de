namespace Silkwright.Light;

/// <summary>Where the photons of one block ended. Weights, and their squares for standard errors.</summary>
internal sealed class SlabTally
{
    public double Out;
    public double OutSquares;
    public double Below;
    public double BelowSquares;
    public double Unscattered;
    public double AbsorbedSquares;
    public double Roulette;

    /// <summary>By layer, from above to below.</summary>
    public double[] Absorbed { get; init; } = [];

    /// <summary>Another block's added.</summary>
    public void Add(SlabTally other)
    {
        Out += other.Out;
        OutSquares += other.OutSquares;
        Below += other.Below;
        BelowSquares += other.BelowSquares;
        Unscattered += other.Unscattered;
        AbsorbedSquares += other.AbsorbedSquares;
        Roulette += other.Roulette;
        for (var layer = 0; layer < Absorbed.Length; layer++)
            Absorbed[layer] += other.Absorbed[layer];
    }
}
