using System.CommandLine.Parsing;
using Silkwright.Contracts;

namespace Silkwright.Cli;

/// <summary>What the parser of the command line refuses, without the names of the program's own types.</summary>
internal static class ParseWords
{
    /// <summary>The parser says so where a word is not of an option's kind; here the only kinds of options besides words are whole numbers.</summary>
    private const string OfKind = "expected type";

    public static string Of(ParseError error)
    {
        if (!error.Message.Contains(OfKind, StringComparison.Ordinal) || Result(error.SymbolResult) is not { Tokens: [var token, ..] } option)
            return error.Message;
        return $"'{NearName.Shown(token.Value)}' is no whole number; {option.Option.Name} takes one, as in {option.Option.Name} 4.";
    }

    private static OptionResult? Result(SymbolResult? symbol) => symbol switch
    {
        OptionResult option => option,
        ArgumentResult { Parent: OptionResult option } => option,
        _ => null,
    };
}
