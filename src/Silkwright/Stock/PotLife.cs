using System.Globalization;
using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Stock;

/// <summary>How long a lot keeps.</summary>
/// <remarks>
/// Docs/engines/stock.md, equations 1 to 3. A hotter store never lengthens the life. Below 21 °C the trade's rule would promise
/// years; here the life is at most doubled, and never past the shelf life, until somebody measures it.
/// </remarks>
public static class PotLife
{
    /// <summary>Store where nobody said: a room, 18 to 26 °C. Common practice; [°C]</summary>
    private static readonly Estimate RoomCelsius = new(21, 18, 26, Ground.CommonPractice);

    /// <summary>
    /// Degrees that halve the life above 21 °C: 10 °F by the trade's rule (a trade article). At 37 °C the rule gives 6 of 42
    /// days and another article 3, hence a factor of two either way there: 4.2 to 8.4. [K]
    /// </summary>
    private static readonly Estimate HalvingKelvin = new(5.6, 4.2, 8.4, Ground.CommonPractice);

    private const double ReferenceCelsius = MixedLives.ReferenceCelsius;

    /// <summary>A closed container keeps its shelf life up to here (a trade article: 18 to 26 °C). [°C]</summary>
    private const double ShelfUpToCelsius = 26;

    /// <summary>Stores the rule is asked about; outside it says nothing. [°C]</summary>
    private const double LeastCelsius = -30;
    private const double MostCelsius = 60;

    /// <summary>How a lot stands on a day.</summary>
    /// <remarks>
    /// A mixed two-part emulsion counts from mixing and, where the day of receipt is known, never past its shelf life. A closed
    /// or ready-to-use one counts from receipt by its shelf life.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">
    /// It was received or mixed after <paramref name="on"/>, or its store is outside −30 to 60 °C.
    /// </exception>
    public static LotState Of(StencilEmulsion emulsion, DateOnly on)
    {
        if (emulsion.LaidWith is { } laying)
            return Sooner(Of(emulsion.WithoutLaying(), on), Of(laying, on));
        ThrowIfLater(emulsion.ReceivedOn, on, "received");
        ThrowIfLater(emulsion.SensitisedOn, on, "mixed");
        var life = LifeDays(emulsion);
        var shelf = ShelfDays(emulsion);
        var mixedOn = FamilyValues.NeedsSensitiser(emulsion.Family) ? emulsion.SensitisedOn : null;

        var left = mixedOn is { } mixed ? DaysLeft(life, mixed, on) : null;
        if (emulsion.ReceivedOn is { } received)
            left = Earlier(left, DaysLeft(shelf, received, on));

        return new LotState
        {
            LifeDays = life,
            DaysLeft = left,
            Over = left is { Value: < 0 },
            Notes = NotesOn(emulsion, life, mixedOn is not null, left),
        };
    }

    /// <summary>A film laid with emulsion can be made as long as both lots keep.</summary>
    private static LotState Sooner(LotState film, LotState laying) => new()
    {
        LifeDays = laying.LifeDays,
        DaysLeft = film.DaysLeft is { } left && laying.DaysLeft is { } other ? Earlier(left, other) : film.DaysLeft ?? laying.DaysLeft,
        Over = film.Over || laying.Over,
        Notes = [.. film.Notes, .. laying.Notes],
    };

    /// <summary>
    /// Days of use at the store's temperature: from mixing for a two-part emulsion, mixed yet or not; from receipt for one that
    /// is ready to use. [d]
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The store is outside −30 to 60 °C.</exception>
    public static Estimate LifeDays(StencilEmulsion emulsion) => FamilyValues.NeedsSensitiser(emulsion.Family)
        ? Propagation.Through(
            x => Math.Min(x[0] * MixedLives.Of(emulsion, x[1], x[2]), x[3] * ClosedFactor(x[1], x[2])),
            [
                new("pot life", MixedLives.Spread(emulsion)),
                new("warmth of the store", StoredCelsius(emulsion)),
                new("halving by warmth", HalvingKelvin),
                new("shelf life", FamilyValues.ShelfLifeMonths(emulsion).Times(FamilyValues.DaysPerMonth)),
            ],
            floor: 0).Estimate
        : ShelfDays(emulsion);

    /// <summary>Life of a closed container beside its shelf life: docs/engines/stock.md, equation 2.</summary>
    private static double ClosedFactor(double celsius, double halvingKelvin) =>
        Math.Min(1, Math.Pow(0.5, (celsius - ShelfUpToCelsius) / halvingKelvin));

    private static Estimate ShelfDays(StencilEmulsion emulsion) => Propagation.Through(
        x => x[0] * ClosedFactor(x[1], x[2]),
        [
            new("shelf life", ClosedLifeDays(emulsion)),
            new("warmth of the store", StoredCelsius(emulsion)),
            new("halving by warmth", HalvingKelvin),
        ],
        floor: 0).Estimate;

    /// <summary>A ready-to-use emulsion's "pot life", where its sheet gives one and no shelf life, is its shelf life.</summary>
    private static Estimate ClosedLifeDays(StencilEmulsion emulsion) =>
        !FamilyValues.NeedsSensitiser(emulsion.Family) && emulsion is { ShelfLifeMonths: null, PotLifeDays: not null }
            ? FamilyValues.PotLifeDaysAt21(emulsion)
            : FamilyValues.ShelfLifeMonths(emulsion).Times(FamilyValues.DaysPerMonth);

    private static Estimate StoredCelsius(StencilEmulsion emulsion) => emulsion.StoredCelsius switch
    {
        null => RoomCelsius,
        < LeastCelsius or > MostCelsius or double.NaN => throw new ArgumentOutOfRangeException(
            nameof(emulsion), emulsion.StoredCelsius, $"The store lies between {LeastCelsius} and {MostCelsius} °C."),
        { } given => Estimate.Exact(given, Ground.MeasuredHere),
    };

    private static Estimate DaysLeft(Estimate life, DateOnly from, DateOnly on) => life.Map(days => days - (on.DayNumber - from.DayNumber));

    private static Estimate Earlier(Estimate? one, Estimate other) => one is null || other.Value < one.Value ? other : one;

    private static void ThrowIfLater(DateOnly? day, DateOnly on, string what)
    {
        if (day > on)
            throw new ArgumentOutOfRangeException(nameof(on), on, $"The lot was {what} on {day:O}, after this day.");
    }

    private static List<Note> NotesOn(StencilEmulsion emulsion, Estimate life, bool mixed, Estimate? left)
    {
        var notes = new List<Note>();
        if (emulsion.StoredCelsius is null)
            notes.Add(new Note($"Where {emulsion.Id} stands is not given: a room of 18 to 26 °C.", Ground.CommonPractice));
        if (emulsion.StoredCelsius < 0)
            notes.Add(new Note($"{emulsion.Id} stands below freezing: some emulsions, water-resistant ones above all, do not survive that. Try a coupon.", Ground.CommonPractice));
        if (emulsion.StoredCelsius < ReferenceCelsius && FamilyValues.NeedsSensitiser(emulsion.Family))
            notes.Add(new Note("Cold lengthens the life once mixed; at most a doubling is counted until it is measured.", Ground.CommonPractice));
        if (FamilyValues.NeedsSensitiser(emulsion.Family) && !mixed)
        {
            notes.Add(new Note(
                string.Create(CultureInfo.InvariantCulture, $"{emulsion.Id} is not mixed yet; once mixed it keeps about {life.Value:0} days ({life.Low:0} to {life.High:0})."),
                life.Ground));
        }

        if (left is null)
            notes.Add(new Note($"The day {emulsion.Id} was {(mixed ? "mixed" : "received")} is not known, so neither are the days it has left."));
        return notes;
    }
}
