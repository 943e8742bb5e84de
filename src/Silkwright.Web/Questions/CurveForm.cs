using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Web.Questions;

/// <summary>Cured depth by dose as it stands in an address: a coat's figures, or depths that were measured.</summary>
/// <param name="Given">What was typed of the figures, by the names of the question's fields; empty ones left out.</param>
/// <param name="Table">Doses and depths, a line each; empty: none.</param>
public sealed record CurveForm(IReadOnlyDictionary<string, string> Given, string Table)
{
    /// <summary>The field that takes measured pairs.</summary>
    public const string TableField = "table";

    public bool IsAsked => Given.Count > 0;

    public bool IsMeasured => Table.Length > 0;

    public static CurveForm Of(IQueryCollection query) => new(
        CurveQuestion.Fields
            .Select(field => KeyValuePair.Create(field.Name, Typed(field, query[field.Name].ToString().Trim())))
            .Where(given => given.Value.Length > 0)
            .ToDictionary(),
        query[TableField].ToString().Trim());

    /// <exception cref="InputProblemException">Something typed is wrong; carries every fault.</exception>
    public CureCurve Curve() => CurveQuestion.Answer(new GivenTexts(Given));

    /// <summary>The curve through the measured pairs; a line without a header has the dose first.</summary>
    /// <exception cref="InputProblemException">Every fault of the table.</exception>
    public DepthFit Fit() => FitDocument.Read(char.IsAsciiLetter(Table[0]) ? Table : $"{string.Join(',', FitDocument.Columns)}\n{Table.Replace('\t', ',')}", "measured depths");

    /// <summary>The form says micrometres, mJ/cm² and percent itself: a bare number there is one.</summary>
    private static string Typed(QuestionField field, string text) => text.Length == 0 || !char.IsAsciiDigit(text[^1]) || field is not QuantityField { Kind: var kind } || kind.Units.Count == 0
        ? text
        : text + kind.KeptIn;
}
