using System.CommandLine;
using System.CommandLine.Parsing;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Cli;

/// <summary>What the parser of the command line refuses, in words of the shop: names written wrong with the one meant, none of the program's own types.</summary>
internal static class ParseWords
{
    /// <summary>The parser says so where a word is not of an option's kind; here the only kinds of options besides words are whole numbers.</summary>
    private const string OfKind = "expected type";

    /// <summary>Every fault of a command line; none where it can be asked.</summary>
    public static IReadOnlyList<Problem> Of(ParseResult parse)
    {
        var command = parse.CommandResult.Command;
        var verb = string.Join(' ', Names(parse.CommandResult).Reverse());
        if (Swallowed(parse) is { Length: > 0 } swallowed)
            return [.. swallowed.Select(word => NoOption(verb, command, word))];
        if (parse.Errors.Count == 0)
            return [];
        if (command.Subcommands.Count > 0 && command is not Verb)
            return [NoVerb(verb, [.. command.Subcommands.Select(sub => sub.Name)], parse.UnmatchedTokens)];
        var help = $"`{verb} --help` shows what it takes, with examples.";
        return
        [
            .. parse.Errors.Where(error => !parse.UnmatchedTokens.Any(word => error.Message.Contains($"'{word}'", StringComparison.Ordinal)))
                .Select(error => new Problem(Plain(error), "command line", help)),
            .. Unknown(parse.UnmatchedTokens).Select(word =>
                IsOption(word) ? NoOption(verb, command, word) : new Problem($"'{NearName.Shown(word)}' is one word too many.", "command line", help)),
        ];
    }

    /// <summary>Options written wrong that the parser took for files; behind a <c>--</c> a file may be called so.</summary>
    private static string[] Swallowed(ParseResult parse)
    {
        var behind = parse.Tokens.SkipWhile(token => token.Type != TokenType.DoubleDash).ToHashSet();
        return [.. parse.CommandResult.Children.OfType<ArgumentResult>().SelectMany(taken => taken.Tokens).Where(token => IsOption(token.Value) && !behind.Contains(token)).Select(token => token.Value)];
    }

    private static Problem NoOption(string verb, Command command, string word)
    {
        var help = $"`{verb} --help` shows what it takes, with examples.";
        return new Problem(
            $"There is no option {NearName.Shown(word)} here.",
            "command line",
            NearName.Of(word, [.. command.Options.Select(option => option.Name)]) is { } near ? $"Write {near} if that is meant; {help}" : help);
    }

    private static Problem NoVerb(string verb, string[] verbs, IReadOnlyList<string> unmatched)
    {
        var all = $"Write one of {string.Join(", ", verbs)}; `{verb} --help` says what each answers.";
        return unmatched is not [var word, ..]
            ? new Problem($"{verb} needs a verb.", "command line", all)
            : new Problem($"'{NearName.Shown(word)}' is not a verb of {verb}.", "command line", NearName.Of(word, verbs) is { } near ? $"Write {near} if that is meant; `{verb} --help` says what each verb answers." : all);
    }

    /// <summary>The words nobody asked for, without those that stand behind an unknown option: they are its value.</summary>
    private static IEnumerable<string> Unknown(IReadOnlyList<string> unmatched) =>
        unmatched.Where((word, i) => IsOption(word) || i == 0 || !IsOption(unmatched[i - 1]));

    private static bool IsOption(string word) => word.StartsWith("--", StringComparison.Ordinal);

    private static string Plain(ParseError error) =>
        error.Message.Contains(OfKind, StringComparison.Ordinal) && Result(error.SymbolResult) is { Tokens: [var token, ..] } result
            ? $"'{NearName.Shown(token.Value)}' is no whole number; {result.Option.Name} takes one, as in {result.Option.Name} 4."
            : error.Message;

    private static OptionResult? Result(SymbolResult? symbol) => symbol switch
    {
        OptionResult option => option,
        ArgumentResult { Parent: OptionResult option } => option,
        _ => null,
    };

    private static IEnumerable<string> Names(CommandResult result)
    {
        for (SymbolResult? one = result; one is CommandResult command; one = one.Parent)
            yield return command.Command.Name;
    }
}
