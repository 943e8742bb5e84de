using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>What <c>expose ladder</c> asks for: a step test to be planned.</summary>
public static class LadderQuestion
{
    public static readonly QuantityField Around = new("around", QuantityKind.Number, "what is exposed now, in seconds or in the machine's units; the model's guess when not given")
    {
        Sample = "60",
        Least = InputLimits.LeastExposure,
        Most = InputLimits.MostExposureUnits,
    };

    public static readonly QuantityField Within = new("within", QuantityKind.Share, "how far the aim may be out either way, afterwards; 25% when not given") { Sample = "25%", Least = 2, Most = 95 };

    public static readonly QuantityField Setting = new("setting", QuantityKind.Number, "smallest change of shutter or counter, in seconds or units; 1 when not given")
    {
        Sample = "1",
        Least = InputLimits.LeastExposure,
        Most = 1000,
    };

    public static readonly ChoiceField CoatMeasured = ChoiceField.Of<YesNo>("coat-measured", "whether the coat's thickness will be measured on the strips; no when not given");

    public static IReadOnlyList<QuestionField> Fields => [.. ExposureQuestion.Fields, Around, Within, Setting, CoatMeasured];

    /// <exception cref="InputProblemException">Something typed is wrong; carries every fault.</exception>
    public static (LadderPlan Plan, IReadOnlyList<Note> Notes) Answer(GivenTexts given) => Answer(given, [], null);

    /// <summary>The next test after those already made.</summary>
    /// <param name="given">What was typed.</param>
    /// <param name="strips">Strips already read; none: the first test.</param>
    /// <param name="counts">What their amounts count; none: as typed.</param>
    /// <exception cref="InputProblemException">Something typed is wrong; carries every fault.</exception>
    public static (LadderPlan Plan, IReadOnlyList<Note> Notes) Answer(GivenTexts given, IReadOnlyList<StepTest> strips, ExposureCount? counts)
    {
        var exposure = ExposureQuestion.Read(given, strips, out var assumed);
        var (around, within, setting) = (given.Read(Around), given.Read(Within), given.Read(Setting));
        var measured = given.Read<YesNo>(CoatMeasured);
        if (exposure is not null && (counts ?? exposure.Lamp.Counts) == ExposureCount.Units && strips.All(strip => strip.Damp) && !given.Has(Around))
            given.Problems.Add("Units of a machine mean nothing to anybody else: where to begin is not known.", given.Where(Around), $"Give {given.Where(Around)} with the units that are exposed now.");
        given.ThrowIfAny();
        if (counts is { } counted)
            exposure = exposure! with { Lamp = exposure.Lamp with { Counts = counted } };
        var usual = new LadderWish();
        var plan = StepLadder.Plan(exposure!, usual with
        {
            Around = around,
            WantedHalf = within / 100 ?? usual.WantedHalf,
            SmallestSetting = setting ?? usual.SmallestSetting,
            MeasuresCoat = measured == YesNo.Yes,
        });
        return (plan, [.. assumed, .. LadderDocument.NotesOn(plan)]);
    }
}
