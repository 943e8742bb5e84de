using System.CommandLine;
using System.CommandLine.Help;
using Silkwright.Cli.Commands.Catalogue;
using Silkwright.Cli.Commands.Choose;
using Silkwright.Cli.Commands.Coat;
using Silkwright.Cli.Commands.Demo;
using Silkwright.Cli.Commands.Dry;
using Silkwright.Cli.Commands.Expose;
using Silkwright.Cli.Commands.Film;
using Silkwright.Cli.Commands.Gauge;
using Silkwright.Cli.Commands.Ink;
using Silkwright.Cli.Commands.Light;
using Silkwright.Cli.Commands.Mesh;
using Silkwright.Cli.Commands.Plan;
using Silkwright.Cli.Commands.Screen;
using Silkwright.Cli.Commands.Serve;
using Silkwright.Cli.Commands.Shelf;
using Silkwright.Cli.Printing;
using Silkwright.Estimates;

namespace Silkwright.Cli;

/// <summary>The one executable: finds the verb, runs it, and turns how it ended into an exit code.</summary>
internal static class Shell
{
    /// <returns>0 done, 2 bad input, 1 a failure of ours, 130 stopped.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> args, Surroundings surroundings, CancellationToken cancel = default)
    {
        var parse = Root(surroundings).Parse(args);
        try
        {
            if (parse.Action is not TeachingHelp && ParseWords.Of(parse) is { Count: > 0 } faults)
                throw new InputProblemException(faults);
            var configuration = new InvocationConfiguration
            {
                Output = surroundings.Output,
                Error = surroundings.Error,
                EnableDefaultExceptionHandler = false,
            };
            return await parse.InvokeAsync(configuration, cancel);
        }
        catch (InputProblemException fault)
        {
            ProblemPrinter.Print(fault.Problems, surroundings.Error);
            return ExitCode.BadInput;
        }
        catch (OperationCanceledException)
        {
            await surroundings.Error.WriteLineAsync("Stopped. Nothing was written.");
            return ExitCode.Stopped;
        }
#pragma warning disable CA1031 // the edge: whatever it is, a person gets one line and not a stack of calls
        catch (Exception failure)
#pragma warning restore CA1031
        {
            ProblemPrinter.PrintFailure(failure, surroundings);
            return ExitCode.Failed;
        }
    }

    /// <summary>The command tree.</summary>
    public static Command Root(Surroundings surroundings)
    {
        // Not a RootCommand: that one is called by its assembly's name in every usage line.
        var root = new Command("silkwright", "Plans the stencils of a textile screen-print job, and answers the questions a plan is made of.")
        {
            new HelpOption(),
            new VersionOption(),
            PlanCommand.Create(surroundings),
            ChooseCommand.Create(surroundings),
            CatalogueCommand.Create(surroundings),
            FilmCommand.Create(surroundings),
            MeshCommand.Create(surroundings),
            InkCommand.Create(surroundings),
            CoatCommand.Create(surroundings),
            ExposeCommand.Create(surroundings),
            LightCommand.Create(surroundings),
            GaugeCommand.Create(surroundings),
            DryCommand.Create(surroundings),
            ShelfCommand.Create(surroundings),
            ScreenCommand.Create(surroundings),
            ServeCommand.Create(surroundings),
            DemoCommand.Create(surroundings),
        };
        foreach (var help in root.Options.OfType<HelpOption>())
            help.Action = new TeachingHelp((HelpAction)help.Action!);
        root.SetAction(_ => root.Parse(["--help"]).Invoke(new InvocationConfiguration { Output = surroundings.Output }));
        return root;
    }
}
