using Silkwright.Answers;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>What <c>choose</c> asks for when there is no job: ink and run, and whatever else is known.</summary>
public static class EmulsionQuestion
{
    public static readonly ChoiceField Ink = ChoiceField.Of<InkKind>("ink", "what the ink is made of") with { Required = true };

    public static readonly QuantityField Run = new("run", QuantityKind.Number, "pieces of the run")
    {
        Sample = "500",
        Required = true,
        Least = 1,
        Most = 10_000_000,
        Whole = true,
    };

    public static readonly QuantityField Pace = new("pace", QuantityKind.Number, "screens the shop makes a day, all emulsions together")
    {
        Sample = "20",
        Least = InputLimits.LeastScreensPerDay,
        Most = InputLimits.MostScreensPerDay,
    };

    public static readonly ChoiceField Work = ChoiceField.Of<WorkKind>("work", "what kind of work it is");

    public static readonly QuantityField FinestLine = new("finest-line", QuantityKind.Thickness, "finest line of the artwork")
    {
        Sample = "200um",
        Least = 10,
        Most = 50_000,
    };

    public static readonly QuantityField Ruling = new("ruling", QuantityKind.PerLength, "ruling of the halftone")
    {
        Sample = "45/in",
        Least = 4,
        Most = 79,
    };

    public static readonly TextField Garment = new("garment", "colour of the garment, as one says it", "black");

    public static readonly ChoiceField Light = ChoiceField.Of<RoomLight>("light", "light where coated screens lie");

    public static readonly QuantityField Lux = new("lux", QuantityKind.Number, "how bright it is there, in lux, as a meter reads it")
    {
        Sample = "200",
        Least = InputLimits.LeastLux,
        Most = InputLimits.MostLux,
    };

    public static readonly ChoiceField Wash = ChoiceField.Of<PressWash>("wash", "what screens are wiped with on press");

    public static readonly QuantityField Temperature = new("temperature", QuantityKind.Temperature, "air of the room")
    {
        Least = 0,
        Most = 45,
        Because = "hotter air hardens coats before they are exposed",
    };

    public static readonly QuantityField Humidity = new("humidity", QuantityKind.Share, "relative humidity of the room")
    {
        Least = 1,
        Most = 100,
    };

    public static IReadOnlyList<QuestionField> Fields =>
        [Ink, Run, Pace, Work, FinestLine, Ruling, Garment, Light, Lux, Temperature, Humidity, Wash];

    /// <summary>Answers for a shop; what was typed stands above what the shop says of itself.</summary>
    /// <param name="given">What was typed.</param>
    /// <param name="shop">The shop as far as it is known.</param>
    /// <param name="on">The day of the question.</param>
    /// <exception cref="InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static EmulsionAnswer Answer(GivenTexts given, Shop shop, DateOnly on)
    {
        var colour = new JobColour
        {
            Name = "The colour asked about",
            Ink = given.Read<InkKind>(Ink) ?? default,
            Kind = given.Read<WorkKind>(Work),
            Needs = Needs(given),
        };
        var job = new Job
        {
            Name = "A question",
            Date = on,
            Run = Pieces(given.ReadRequired(Run)),
            Garment = new Garment(given.Read(Garment)),
            Colours = [colour],
        };
        var asked = shop with
        {
            ScreensPerDay = given.Read(Pace) ?? shop.ScreensPerDay,
            PressWash = given.Read<PressWash>(Wash) ?? shop.PressWash,
            Room = shop.Room with
            {
                Light = given.Read<RoomLight>(Light) ?? shop.Room.Light,
                Lux = given.Read(Lux) ?? shop.Room.Lux,
                Celsius = given.Read(Temperature) ?? shop.Room.Celsius,
                HumidityPercent = given.Read(Humidity) ?? shop.Room.HumidityPercent,
            },
        };
        given.ThrowIfAny();
        return Advisor.Answer(job, colour, asked);
    }

    private static TypedNeeds? Needs(GivenTexts given)
    {
        var line = given.Read(FinestLine);
        var ruling = given.Read(Ruling);
        return line is null && ruling is null ? null : new TypedNeeds(line, RulingLpi: ruling * 2.54);
    }

    /// <summary>After a fault there is no number; the engine is not asked.</summary>
    private static long Pieces(double run) => double.IsNaN(run) ? 1 : (long)run;
}
