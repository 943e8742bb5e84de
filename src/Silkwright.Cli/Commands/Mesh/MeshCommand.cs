using System.CommandLine;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Mesh;

namespace Silkwright.Cli.Commands.Mesh;

/// <summary><c>silkwright mesh</c>: the geometry of a woven mesh.</summary>
internal static class MeshCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("mesh", "What a mesh can hold and carry: opening, open area, thickness, ink volume, finest line and dot.")
        {
            Examples =
            [
                ("silkwright mesh --count 61/cm --thread 64um", "a general mesh, metric"),
                ("silkwright mesh --count 230/in --thread 1.57mil --fabric-thickness 2.3mil --json", "a finer one in US units, for a program"),
            ],
            GoodToKnow = "Suppliers round counts and publish openings a few micrometres below pitch less thread; type what your label says.",
        };
        var options = new QuestionOptions(verb, MeshQuestion.Fields);
        var json = Answer.JsonOption();
        verb.Add(json);
        verb.SetAction(parse =>
        {
            var mesh = WovenMesh.Of(MeshQuestion.Read(options.Given(parse)));
            if (parse.GetValue(json))
                Answer.WriteJson(MeshDocument.Of(mesh), surroundings);
            else
                MeshTable.Print(mesh, Answer.Console(surroundings));
        });
        return verb;
    }
}
