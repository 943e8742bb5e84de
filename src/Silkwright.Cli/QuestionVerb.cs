using System.CommandLine;
using System.Text.Json.Nodes;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Spectre.Console;

namespace Silkwright.Cli;

/// <summary>A verb that reads a few quantities, asks one engine and prints its answer.</summary>
internal static class QuestionVerb
{
    /// <param name="verb">The verb with its help.</param>
    /// <param name="fields">What it asks for.</param>
    /// <param name="answer">Reads what was typed and asks the engine.</param>
    /// <param name="document">The answer for programs.</param>
    /// <param name="table">The answer for people.</param>
    /// <param name="surroundings">Where the answer goes.</param>
    public static Command Complete<T>(
        Verb verb,
        IReadOnlyList<QuestionField> fields,
        Func<GivenTexts, T> answer,
        Func<T, JsonObject> document,
        Action<T, IAnsiConsole> table,
        Surroundings surroundings)
    {
        var options = new QuestionOptions(verb, fields);
        var json = Answer.JsonOption();
        verb.Add(json);
        verb.SetAction(parse =>
        {
            var result = answer(options.Given(parse));
            if (parse.GetValue(json))
                Answer.WriteJson(document(result), surroundings);
            else
                table(result, Answer.Console(surroundings));
        });
        return verb;
    }
}
