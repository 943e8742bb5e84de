using System.CommandLine;
using Silkwright.Contracts;

namespace Silkwright.Cli.Commands.Ink;

/// <summary><c>silkwright ink</c>: ink laid and used.</summary>
internal static class InkCommand
{
    public static Command Create(Surroundings surroundings) => QuestionVerb.Complete(
        new Verb("ink", "How thick the ink lies and how much of it a run takes, with how far that may be out.")
        {
            Examples =
            [
                ("silkwright ink --mesh 61/cm --thread 64um --eom 12um --coverage 35% --area 900cm2 --impressions 600", "a usual front print in plastisol"),
                ("silkwright ink --mesh 156/in --thread 2.5mil --eom 0.5mil --coverage 35% --area 140in2 --impressions 600 --ink water-based --transfer 60..75% --density 1.1g/cm3 --volume-solids 40% --json",
                 "US units, a water-based ink weighed before, for a program"),
            ],
            GoodToKnow = "Ink that stays in the screen, is spilt or is thrown away is not in it. Weigh a garment before and after printing: that beats any estimate.",
        },
        InkQuestion.Fields, InkQuestion.Answer, InkDocument.Of, InkTable.Print, surroundings);
}
