using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Web.Questions;

/// <summary>A step test as it stands in an address: what is exposed, and what was read on each strip.</summary>
/// <param name="Given">What was typed, by the names of the question's fields; empty ones left out.</param>
/// <param name="Strips">The rows of the form.</param>
public sealed record ExposureForm(IReadOnlyDictionary<string, string> Given, IReadOnlyList<StripRow> Strips)
{
    public bool IsAsked => Given.Count > 0 || IsRead;

    /// <summary>At least one strip was read.</summary>
    public bool IsRead => Strips.Any(strip => strip.IsRead);

    public static ExposureForm Of(IQueryCollection query) => new(
        LadderQuestion.Fields
            .Select(field => KeyValuePair.Create(field.Name, Typed(field, query[field.Name].ToString().Trim())))
            .Where(given => given.Value.Length > 0)
            .ToDictionary(),
        [.. Enumerable.Range(1, StripRow.Rows).Select(row => StripRow.Of(query, row))]);

    /// <summary>The test to make.</summary>
    /// <exception cref="InputProblemException">Something typed is wrong; carries every fault.</exception>
    public (LadderPlan Plan, IReadOnlyList<Note> Notes) Plan() => LadderQuestion.Answer(new GivenTexts(Given));

    /// <summary>The test, read.</summary>
    /// <param name="today">Day of the test.</param>
    /// <exception cref="InputProblemException">Something typed is wrong; carries every fault.</exception>
    public StepTestReading Read(DateOnly today)
    {
        var problems = new ProblemList();
        var typed = Given.Where(given => ExposureQuestion.Fields.Any(known => known.Name == given.Key)).ToDictionary();
        var asked = ExposureQuestion.Window(new GivenTexts(typed)).Case;
        var line = ExposureModel.NeededLineUm(asked);
        var strips = Strips.Select((strip, i) => (strip, Row: i + 1)).Where(one => one.strip.IsRead).Select(one => one.strip.ToStrip(one.Row, line, today, problems)).ToArray();
        problems.ThrowIfAny();
        return StepTestQuestion.Answer(new GivenTexts(typed), strips, asked.Lamp.Counts);
    }

    /// <summary>What stands in the field of a strip: typed, or the plan's.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="plan">The test to make; none: not planned.</param>
    public string Amount(int row, LadderPlan? plan) => Strips[row].Amount.Length > 0 ? Strips[row].Amount
        : plan is not null && !IsRead && row < plan.Amounts.Count ? plan.Amounts[row].ToString("0.###", CultureInfo.InvariantCulture)
        : "";

    /// <summary>The form says micrometres, millimetres, threads a centimetre and percent itself: a bare number there is one.</summary>
    private static string Typed(QuestionField field, string text) => text.Length == 0 || !char.IsAsciiDigit(text[^1]) || field is not QuantityField { Kind: var kind } || kind.Units.Count == 0
        ? text
        : text + kind.KeptIn;
}
