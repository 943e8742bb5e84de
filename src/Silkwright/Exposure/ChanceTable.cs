namespace Silkwright.Exposure;

/// <summary>A chance over the logarithm of exposure, worked out once at even steps and drawn straight between them; its greatest is 1.</summary>
internal sealed class ChanceTable
{
    /// <summary>Finer than anything a reading tells apart. [log exposure]</summary>
    private const double Step = 0.03;

    /// <summary>Beyond this off the outermost strip no reading changes any more. [log exposure]</summary>
    private const double Margin = 8;

    /// <summary>Many strips of one day rule nothing out so far that what other days say of it is lost in a computer's least number.</summary>
    private const double LeastChance = 1e-80;

    private readonly double from;
    private readonly double[] chances;

    /// <param name="logChance">Natural logarithm of the chance.</param>
    /// <param name="least">Logarithm of the least exposure given.</param>
    /// <param name="most">Logarithm of the most.</param>
    internal ChanceTable(Func<double, double> logChance, double least, double most)
    {
        from = least - Margin;
        double[] logs = [.. Enumerable.Range(0, (int)((most + Margin - from) / Step) + 2).Select(i => logChance(from + (i * Step)))];
        LogGreatest = logs.Max();
        chances = [.. logs.Select(log => Math.Max(LeastChance, Math.Exp(log - LogGreatest)))];
    }

    /// <summary>Natural logarithm of the chance that stands as 1.</summary>
    internal double LogGreatest { get; }

    internal double At(double x)
    {
        var place = Math.Clamp((x - from) / Step, 0, chances.Length - 1.0001);
        var below = (int)place;
        return chances[below] + ((place - below) * (chances[below + 1] - chances[below]));
    }
}
