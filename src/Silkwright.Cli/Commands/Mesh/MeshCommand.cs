using System.CommandLine;
using Silkwright.Contracts;

namespace Silkwright.Cli.Commands.Mesh;

/// <summary><c>silkwright mesh</c>: the geometry of a woven mesh.</summary>
internal static class MeshCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var mesh = Geometry(surroundings);
        mesh.Add(MoireCommand.Create(surroundings));
        return mesh;
    }

    private static Command Geometry(Surroundings surroundings) => QuestionVerb.Complete(
        new Verb("mesh", "What a mesh can hold and carry: opening, open area, thickness, ink volume, finest line and dot.")
        {
            Examples =
            [
                ("silkwright mesh --count 61/cm --thread 64um", "a general mesh, metric"),
                ("silkwright mesh --count 230/in --thread 1.57mil --fabric-thickness 2.3mil --json", "a finer one in US units, for a program"),
            ],
            GoodToKnow = "Suppliers round counts and publish openings a few micrometres below pitch less thread; type what your label says.",
        },
        MeshQuestion.Fields, MeshQuestion.Answer, MeshDocument.Of, MeshTable.Print, surroundings);
}
