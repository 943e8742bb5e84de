using System.CommandLine;
using Silkwright.Contracts;

namespace Silkwright.Cli.Commands.Dry;

/// <summary><c>silkwright dry</c>: air, and how long a coat dries in it.</summary>
internal static class DryCommand
{
    public static Command Create(Surroundings surroundings) => new("dry", "What the air holds, and how long a coat dries in it.")
    {
        Air(surroundings),
        Time(surroundings),
    };

    private static Command Air(Surroundings surroundings) => QuestionVerb.Complete(
        new Verb("air", "The state of moist air: dew point, wet bulb, water held, vapour pressure.")
        {
            Examples =
            [
                ("silkwright dry air --temperature 25C --humidity 50%", "a usual room at sea level"),
                ("silkwright dry air --temperature 86F --humidity 65% --altitude 5000ft --json", "a warm room high up, for a program"),
            ],
            GoodToKnow = "A screen colder than the dew point gets wet again: let frames come to the room's temperature first.",
        },
        AirQuestion.Fields, AirQuestion.Answer, AirDocument.Of, AirTable.Print, surroundings);

    private static Command Time(Surroundings surroundings) => QuestionVerb.Complete(
        new Verb("time", "How long a coat dries in this air, to the touch and to where it is safe to expose, and whether a film will stick.")
        {
            Examples =
            [
                ("silkwright dry time --temperature 30C --humidity 35% --air-speed 0.5m/s --wet-thickness 60um --solids 40%", "a cabinet with a fan"),
                ("silkwright dry time --temperature 75F --humidity 65% --wet-thickness 2..3mil --solids 35% --family dual-cure --json", "a humid room, for a program"),
            ],
            GoodToKnow = "Dry to the touch is not dry through. Never leave a heated cabinet unattended without an over-temperature cut-out.",
        },
        DryingQuestion.Fields, DryingQuestion.Answer, DryingDocument.Of, DryingTable.Print, surroundings);
}
