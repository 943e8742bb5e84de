using System.Diagnostics;
using System.Globalization;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Bench;

/// <summary>How long the few emulsions to keep take to find and to prove, beside the plain model in the same solver.</summary>
internal static class ShelfBench
{
    /// <summary>Longest wait for the plain model. [s]</summary>
    private const int MostPlainSeconds = 60;

    /// <summary>Costs beyond which the plain model is not tried: it needs gigabytes.</summary>
    private const int MostPlainCosts = 300_000;

    /// <summary>Size of the cases whose likeness to the engines' costs is told, and traits looked for.</summary>
    private const int LikeEmulsions = 30;
    private const int LikeJobs = 150;
    private const int LikeTraits = 6;

    private static readonly (int Emulsions, int Jobs)[] Sizes = [(30, 500), (100, 2_000), (300, 10_000)];

    public static async Task RunAsync()
    {
        var self = Environment.ProcessPath!;
        Console.WriteLine($"Each case in a process of its own. Choice: the best shelf alone; root: its gap before any splitting; answer: with second best, one more, one fewer. Plain: the strong form as it is,");
        Console.WriteLine($"same solver, same run, at most {MostPlainSeconds} s. Memory is the process's, its case in it. Cases from a seed.");
        Console.WriteLine();
        TellLikeness();
        Console.WriteLine();
        Console.WriteLine($"{"costs",-8}{"emulsions",10}{"jobs",8}{"kept",6}{"choice, s",11}{"gap, %",10}{"root, %",9}{"answer, s",11}{"MiB",6}{"plain, s",10}{"ratio",8}");
        foreach (var (emulsions, jobs) in Sizes)
        {
            // Costs from the engines take their time: the smallest size only.
            foreach (var kind in emulsions == Sizes[0].Emulsions ? ShelfCases.Kinds.Prepend("engines") : ShelfCases.Kinds)
            {
                string[] size = [kind, Text(emulsions), Text(jobs)];
                var own = await ProgramRun.OfAsync(self, ["shelf-choice", .. size]);
                var figures = own.Output.Split(' ');
                var plain = (long)emulsions * jobs > MostPlainCosts ? null : (await ProgramRun.OfAsync(self, ["shelf-plain", .. size])).Output.Trim();
                var ratio = plain is null || plain.StartsWith('>') ? "" : $"{double.Parse(plain, CultureInfo.InvariantCulture) / double.Parse(figures[1], CultureInfo.InvariantCulture):0}";
                Console.WriteLine($"{kind,-8}{emulsions,10}{jobs,8}{figures[0],6}{figures[1],11}{figures[2],10}{figures[4],9}{figures[3],11}{own.PeakMiB,6:0}{plain ?? "not tried",10}{ratio,8}");
            }
        }
    }

    /// <summary>Which of the made shapes is like costs that come from the engines.</summary>
    private static void TellLikeness()
    {
        Console.WriteLine($"What so many traits leave unexplained of the costs' spread within a job, % ({LikeEmulsions} emulsions, {LikeJobs} jobs)");
        Console.WriteLine($"{"costs",-8}{string.Concat(Enumerable.Range(1, LikeTraits).Select(trait => $"{trait,8}"))}");
        Tell("engines", EngineCases.Of(LikeEmulsions, LikeJobs));
        foreach (var kind in ShelfCases.Kinds)
            Tell(kind, ShelfCases.Of(kind, LikeEmulsions, LikeJobs));

        static void Tell(string kind, ShelfCase shelf) =>
            Console.WriteLine($"{kind,-8}{string.Concat(ShelfTraits.LeftPercent(shelf, LikeTraits).Select(left => string.Create(CultureInfo.InvariantCulture, $"{left,8:0.0}")))}");
    }

    private static ShelfCase CaseOf(string kind, string emulsions, string jobs) =>
        kind == "engines" ? EngineCases.Of(Number(emulsions), Number(jobs)) : ShelfCases.Of(kind, Number(emulsions), Number(jobs));

    /// <summary>One case by the engine: emulsions kept, seconds of the choice, its gap, seconds of the whole answer, gap before any splitting, cost; with so many times the usual work.</summary>
    public static void Choose(string kind, string emulsions, string jobs, string times)
    {
        var shelf = CaseOf(kind, emulsions, jobs);
        Warm();
        var clock = Stopwatch.StartNew();
        var problem = ShelfProblem.Of(shelf);
        var best = new ShelfSearch(problem, CancellationToken.None).Best(new ShelfRules(0, problem.Emulsions), new bool[problem.Choices], ShelfChoice.BestLooks * Number(times), _ => { })!;
        var choice = clock.Elapsed.TotalSeconds;
        var root = new ShelfSearch(problem, CancellationToken.None).Best(new ShelfRules(0, problem.Emulsions), best.Keep, 1, _ => { })!;
        var answer = ShelfChoice.Of(shelf, TimeProvider.System);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{answer.Keep.Count} {choice:0.00} {Below(best.Bound):0.0000} {answer.Seconds:0.00} {Below(root.Bound):0.00} {best.Cost:0.00}"));

        double Below(double bound) => 100 * (best.Cost - bound) / best.Cost;
    }

    /// <summary>One case by the strong form as it is: seconds, or that it took too long.</summary>
    public static void Plain(string kind, string emulsions, string jobs)
    {
        var shelf = CaseOf(kind, emulsions, jobs);
        Warm();
        var clock = Stopwatch.StartNew();
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(MostPlainSeconds));
        try
        {
            var problem = ShelfProblem.Of(shelf);
            using var model = new ShelfModel(problem, new ShelfRules(0, problem.Emulsions), ShelfFixing.Nothing(problem));
            _ = model.Solve(long.MaxValue, out _, limit.Token);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{clock.Elapsed.TotalSeconds:0.00}"));
        }
        catch (OperationCanceledException)
        {
            Console.WriteLine($"> {MostPlainSeconds}");
        }
    }

    /// <summary>Loads the solver and compiles: a process that lives has done so before.</summary>
    private static void Warm() => ShelfChoice.Of(ShelfCases.Of("trade", 6, 20), TimeProvider.System);

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
