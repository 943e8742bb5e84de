using System.CommandLine;
using System.Text;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Film.Pictures;
using Silkwright.Moire;

namespace Silkwright.Cli.Commands.Mesh;

/// <summary><c>silkwright mesh moire</c>: how a halftone beats with a mesh and a knit.</summary>
internal static class MoireCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("moire", "How a halftone beats with the mesh and the garment's knit, how plainly that is seen, and which angle or ruling beats least.")
        {
            Examples =
            [
                ("silkwright mesh moire --count 61/cm --thread 64um --ruling 45/in --angle 22.5deg", "a halftone on a general mesh"),
                ("silkwright mesh moire --count 230/in --ruling 55/in --angle 22.5deg --knit-courses 20/cm --knit-wales 14/cm --json", "with the garment's knit, for a program"),
                ("silkwright mesh moire --count 61/cm --thread 64um --ruling 45/in --angle 0deg --on-hand 77/55,90/48,120/34", "held against the other meshes of the rack"),
            ],
            GoodToKnow = "Lay the film on the stretched mesh over a light table and turn it before a long run: a mesh off its label by one thread in a hundred beats otherwise.",
        };
        var options = new QuestionOptions(verb, MoireQuestion.Fields);
        var picture = new Option<string?>("--picture")
        {
            Description = "draw halftone and mesh to scale into this file (optional; .png or .svg)",
            HelpName = "moire.png",
        };
        verb.Add(picture);
        var json = Answer.JsonOption();
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var path = parse.GetValue(picture);
            var kind = path is null ? null : OutputFile.PictureKind(path);
            var answer = MoireQuestion.Answer(options.Given(parse));
            if (path is not null)
                await OutputFile.WriteAsync(path, Draw(answer, kind!), cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(MoireDocument.Of(answer), surroundings);
            else
                MoireTable.Print(answer, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }

    private static byte[] Draw(MoireAnswer answer, string kind)
    {
        var picture = MoirePicture.Of(answer.Asked, MoireDrawing.WidthPx, MoireDrawing.HeightPx);
        return kind == "png"
            ? MoireDrawing.Png(picture)
            : Encoding.UTF8.GetBytes(MoireDrawing.Svg(picture, answer.Patterns.FirstOrDefault(pattern => pattern is { Ruling: not null, Thread: not null })));
    }
}
