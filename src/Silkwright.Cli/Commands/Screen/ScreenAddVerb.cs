using System.CommandLine;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Mesh;
using Silkwright.Records.Screens;

namespace Silkwright.Cli.Commands.Screen;

/// <summary><c>silkwright screen add</c>.</summary>
internal static class ScreenAddVerb
{
    private static readonly QuantityField Mesh = MeshQuestion.Count with { Name = "mesh", Meaning = "mesh count" };
    private static readonly QuantityField Tension = new("tension", QuantityKind.Tension, "tension as read on the frame") { Least = InputLimits.LeastTensionNPerCm, Most = InputLimits.MostTensionNPerCm };
    private static readonly TextField Frame = new("frame", "the label on the frame", "Q-07") { Required = true };
    private static readonly TextField Person = new("person", "who says so, by name", "\"Ines Tarrow\"") { Required = true };
    private static readonly TextField Id = new("id", "code for the screen; the next free one when not given", "S-0042");
    private static readonly TextField MeshLot = new("mesh-lot", "lot of the mesh", "T34-0418");
    private static readonly TextField Shop = new("shop", "key of the shop; the one shop when not given", "marlowe-quay");

    private static IReadOnlyList<QuestionField> Fields => [Frame, Mesh, MeshQuestion.Thread, Tension, MeshLot, Person, Id, Shop];

    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("add", "Puts a screen on record: a frame with its mesh.")
        {
            Examples = [("silkwright screen add --frame Q-07 --mesh 120/cm --thread 34um --dyed --tension 23N/cm --person \"Ines Tarrow\" --id S-0042", "a dyed fine mesh; without --id the next free code is taken")],
            GoodToKnow = "A frame that is reclaimed and coated again is a new screen.",
        };
        var options = new QuestionOptions(verb, Fields);
        var dyed = new Option<bool>("--dyed") { Description = "the mesh is dyed yellow or amber" };
        var data = RecordsFolder.Option();
        var json = Answer.JsonOption();
        verb.Add(dyed);
        verb.Add(data);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var draft = Read(options.Given(parse), parse.GetValue(dyed));
            var store = await RecordsFolder.OpenAsync(parse.GetRequiredValue(data), surroundings, cancel);
            var screen = await store.Screens.AddAsync(draft, cancel);
            await ScreenShowVerb.PrintAsync(store, screen.Id, parse.GetValue(json), surroundings, cancel);
            return ExitCode.Done;
        });
        return verb;
    }

    private static ScreenDraft Read(GivenTexts given, bool dyed)
    {
        var frame = given.Read(Frame);
        var mesh = MeshQuestion.Read(given, Mesh);
        var tension = given.Read(Tension);
        var person = given.Read(Person);
        given.ThrowIfAny();
        return new ScreenDraft
        {
            Id = given.Read(Id),
            ShopKey = given.Read(Shop),
            Frame = frame!,
            Mesh = new MeshFabric(mesh.CountPerCm, mesh.ThreadUm, dyed) { TensionNPerCm = tension },
            MeshLot = given.Read(MeshLot),
            Person = person!,
        };
    }
}
