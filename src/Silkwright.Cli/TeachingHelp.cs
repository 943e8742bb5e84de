using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Silkwright.Cli;

/// <summary>The usual help, then examples that work and what is good to know.</summary>
internal sealed class TeachingHelp(HelpAction usual) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        usual.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        if (parseResult.CommandResult.Command is not Verb verb)
            return ExitCode.Done;
        if (verb.Examples.Count > 0)
            output.WriteLine("Examples:");
        foreach (var (line, shows) in verb.Examples)
        {
            output.WriteLine($"  {line}");
            output.WriteLine($"      {shows}");
        }

        if (verb.GoodToKnow is { } known)
        {
            output.WriteLine();
            output.WriteLine("Good to know:");
            output.WriteLine($"  {known}");
        }

        return ExitCode.Done;
    }
}
