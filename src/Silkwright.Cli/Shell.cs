using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using Silkwright.Cli.Commands.Dry;
using Silkwright.Cli.Commands.Expose;
using Silkwright.Cli.Commands.Ink;
using Silkwright.Cli.Commands.Mesh;
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
            if (parse.Errors.Count > 0 && parse.Action is not TeachingHelp)
                throw new InputProblemException([.. parse.Errors.Select(error => ProblemOf(error, parse))]);
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
            MeshCommand.Create(surroundings),
            InkCommand.Create(surroundings),
            ExposeCommand.Create(surroundings),
            DryCommand.Create(surroundings),
        };
        foreach (var help in root.Options.OfType<HelpOption>())
            help.Action = new TeachingHelp((HelpAction)help.Action!);
        root.SetAction(_ => root.Parse(["--help"]).Invoke(new InvocationConfiguration { Output = surroundings.Output }));
        return root;
    }

    private static Problem ProblemOf(ParseError error, ParseResult parse)
    {
        var verb = string.Join(' ', Names(parse.CommandResult).Reverse());
        return new Problem(error.Message, "command line", $"`{verb} --help` shows what it takes, with examples.");
    }

    private static IEnumerable<string> Names(CommandResult result)
    {
        for (SymbolResult? one = result; one is CommandResult command; one = one.Parent)
            yield return command.Command.Name;
    }
}
