using System.CommandLine;
using Silkwright.Contracts;

namespace Silkwright.Cli;

/// <summary>A question's fields as options of a command.</summary>
internal sealed class QuestionOptions
{
    private readonly Dictionary<string, Option<string?>> options = [];

    public QuestionOptions(Command command, IEnumerable<QuestionField> fields)
    {
        foreach (var field in fields)
        {
            var need = field.Required ? "needed" : "optional";
            var option = new Option<string?>($"--{field.Name}")
            {
                Description = $"{field.Meaning} ({need}; {field.Taken})",
                HelpName = field.Example,
            };
            options.Add(field.Name, option);
            command.Add(option);
        }
    }

    /// <summary>What was typed.</summary>
    public GivenTexts Given(ParseResult parse)
    {
        var texts = new Dictionary<string, string>();
        foreach (var (name, option) in options)
        {
            if (parse.GetValue(option) is { } text)
                texts.Add(name, text);
        }

        return new GivenTexts(texts, "--");
    }
}
