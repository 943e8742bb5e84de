namespace Silkwright.Artwork;

/// <summary>Which register mark of one film is which of another.</summary>
/// <remarks>A letter X or a plus sign near a film's edge reads as a mark too: those of other artwork agree on nothing, or only close by, while marks agree all about the film.</remarks>
internal static class RegisterPairs
{
    /// <summary>Films farther apart than this are not laid over each other. [mm] Our own choice: more than any sheet is put in askew.</summary>
    private const double MostShiftMm = 30;

    /// <summary>How far a mark may lie from where the others lay it. [mm] Our own choice: no film is drawn more unevenly.</summary>
    private const double MostAstrayMm = 1;

    /// <summary>Our own choices: a film is put in or drawn no more askew, and output at no other size. [rad, 1]</summary>
    private const double MostTurn = 0.03, MostStretch = 0.05;

    /// <summary>Of all ways to lay two marks on two, or one on one, that on which marks agree farthest about the film; none where no two lie near enough.</summary>
    public static IReadOnlyList<(RegisterMark First, RegisterMark Second)> Of(IReadOnlyList<RegisterMark> first, IReadOnlyList<RegisterMark> second)
    {
        (RegisterMark First, RegisterMark Second)[] near = [.. from one in first from other in second where Laying.Of((one, other)).ShiftMm <= MostShiftMm select (one, other)];
        var layings = near.Select(Laying.Of).Concat(
            from i in Enumerable.Range(0, near.Length)
            from j in Enumerable.Range(i + 1, near.Length - i - 1)
            where near[i].First != near[j].First && near[i].Second != near[j].Second
            let laying = Laying.Of(near[i], near[j])
            where Math.Abs(laying.Turn) <= MostTurn && Math.Abs(laying.Stretch) <= MostStretch
            select laying);
        return layings.Select(laying => (Laying: laying, Pairs: Agreeing(first, second, laying)))
            .OrderByDescending(one => Math.Round(Spread(one.Pairs), 3)).ThenByDescending(one => one.Pairs.Count).ThenBy(one => one.Laying.ShiftMm)
            .FirstOrDefault().Pairs ?? [];
    }

    private static List<(RegisterMark First, RegisterMark Second)> Agreeing(IReadOnlyList<RegisterMark> first, IReadOnlyList<RegisterMark> second, Laying laying)
    {
        var pairs = new List<(RegisterMark, RegisterMark)>();
        var free = second.ToList();
        foreach (var one in first)
        {
            if (free.Count == 0 || free.MinBy(other => laying.AstrayMm(one, other)) is not { } nearest || laying.AstrayMm(one, nearest) > MostAstrayMm)
                continue;
            pairs.Add((one, nearest));
            _ = free.Remove(nearest);
        }

        return pairs;
    }

    /// <summary>Squares of the marks' distances from their middle: what a turn and a stretch are told by. [mm²]</summary>
    private static double Spread(List<(RegisterMark First, RegisterMark Second)> pairs)
    {
        if (pairs.Count < 2)
            return 0;
        var (x, y) = (pairs.Average(pair => pair.First.XMm), pairs.Average(pair => pair.First.YMm));
        return pairs.Sum(pair => ((pair.First.XMm - x) * (pair.First.XMm - x)) + ((pair.First.YMm - y) * (pair.First.YMm - y)));
    }

    /// <summary>One film laid on another: (x, y) comes to lie at (X + c x − s y, Y + s x + c y).</summary>
    private readonly record struct Laying(double X, double Y, double Cosine, double Sine, double ShiftMm)
    {
        public double Turn => Math.Atan2(Sine, Cosine);

        public double Stretch => Math.Sqrt((Cosine * Cosine) + (Sine * Sine)) - 1;

        public static Laying Of((RegisterMark First, RegisterMark Second) pair)
        {
            var (x, y) = (pair.Second.XMm - pair.First.XMm, pair.Second.YMm - pair.First.YMm);
            return new(x, y, 1, 0, Math.Sqrt((x * x) + (y * y)));
        }

        public static Laying Of((RegisterMark First, RegisterMark Second) one, (RegisterMark First, RegisterMark Second) other)
        {
            var (x, y, u, v) = (other.First.XMm - one.First.XMm, other.First.YMm - one.First.YMm, other.Second.XMm - one.Second.XMm, other.Second.YMm - one.Second.YMm);
            var square = (x * x) + (y * y);
            var (c, s) = (((x * u) + (y * v)) / square, ((x * v) - (y * u)) / square);
            return new(one.Second.XMm - (c * one.First.XMm) + (s * one.First.YMm), one.Second.YMm - (s * one.First.XMm) - (c * one.First.YMm), c, s, Of(one).ShiftMm);
        }

        public double AstrayMm(RegisterMark one, RegisterMark other)
        {
            var (dx, dy) = (other.XMm - X - (Cosine * one.XMm) + (Sine * one.YMm), other.YMm - Y - (Sine * one.XMm) - (Cosine * one.YMm));
            return Math.Sqrt((dx * dx) + (dy * dy));
        }
    }
}
