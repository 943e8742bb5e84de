using Spectre.Console;

namespace Silkwright.Cli.Printing;

/// <summary>Shows how far long work is: bars in place for a person, plain lines in a log.</summary>
internal static class FilmWatch
{
    /// <summary>Runs work on some things and shows each one's progress on the message stream.</summary>
    /// <param name="surroundings">Where messages go.</param>
    /// <param name="names">What is worked on, in order.</param>
    /// <param name="doing">In one word: "measuring".</param>
    /// <param name="work">Does the work; told where to report the share done of each thing.</param>
    public static async Task<T> RunAsync<T>(
        Surroundings surroundings, IReadOnlyList<string> names, string doing, Func<IReadOnlyList<IProgress<double>>, Task<T>> work)
    {
        if (!surroundings.ErrorIsTerminal)
            return await work([.. names.Select(name => new Lines(surroundings.Error, $"{doing} {name}"))]);
        var console = Answer.On(surroundings.Error, isTerminal: true, surroundings.Columns);
        return await console.Progress()
            .Columns(new TaskDescriptionColumn { Alignment = Justify.Left }, new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .StartAsync(context => work([.. names.Select(name => new Bar(context.AddTask(Markup.Escape($"{doing} {name}"), maxValue: 1)))]));
    }

    private sealed class Bar(ProgressTask task) : IProgress<double>
    {
        public void Report(double value) => task.Value = value;
    }

    /// <summary>One line at the start and one at the end.</summary>
    private sealed class Lines(TextWriter error, string what) : IProgress<double>
    {
        private readonly Lock turn = new();
        private bool begun, done;

        public void Report(double value)
        {
            lock (turn)
            {
                if (!begun)
                    error.WriteLine($"{what} ...");
                begun = true;
                if (value >= 1 && !done)
                {
                    error.WriteLine($"{what}: done");
                    done = true;
                }
            }
        }
    }
}
