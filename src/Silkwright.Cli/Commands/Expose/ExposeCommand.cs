using System.CommandLine;
using Silkwright.Contracts;

namespace Silkwright.Cli.Commands.Expose;

/// <summary><c>silkwright expose</c>: what light does to the stencil.</summary>
internal static class ExposeCommand
{
    public static Command Create(Surroundings surroundings) => new("expose", "How long to expose.")
    {
        Step(surroundings),
    };

    private static Command Step(Surroundings surroundings) => QuestionVerb.Complete(
        new Verb("step", "The exposure that brings the last solid step of a wedge to where it should be.")
        {
            Examples =
            [
                ("silkwright expose step --seconds 60s --observed 5 --target 7", "step 5 was the last solid one, 7 is wanted: nearly twice the time"),
                ("silkwright expose step --units 120 --observed 8 --target 7 --json", "a machine that counts units of its own"),
            ],
            GoodToKnow = "Each step of a 0.15 wedge passes about 1.41 times the light of the next. Read the strip on a dry, well-developed screen.",
        },
        StepQuestion.Fields, StepQuestion.Answer, StepDocument.Of, StepTable.Print, surroundings);
}
