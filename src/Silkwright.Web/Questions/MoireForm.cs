using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Mesh;
using Silkwright.Moire;

namespace Silkwright.Web.Questions;

/// <summary>The question about moiré as it stands in an address.</summary>
/// <param name="Given">What was typed, by the names of the question's fields; empty ones left out.</param>
public sealed record MoireForm(IReadOnlyDictionary<string, string> Given)
{
    public bool IsAsked => Given.Count > 0;

    public static MoireForm Of(IQueryCollection query) => new(MoireQuestion.Fields
        .Select(field => KeyValuePair.Create(field.Name, Typed(field, query[field.Name].ToString().Trim())))
        .Where(given => given.Value.Length > 0)
        .ToDictionary());

    /// <summary>Where the page answers for a case.</summary>
    public static string Address(MoireCase asked) => "/mesh/moire?" + Query(
        [
            (MeshQuestion.Count.Name, Number(asked.Mesh.CountPerCm) + "/cm"), (MeshQuestion.Thread.Name, Number(asked.Mesh.ThreadUm) + "um"),
            (MoireQuestion.Ruling.Name, Number(asked.RulingPerCm) + "/cm"), (MoireQuestion.Angle.Name, Number(asked.AngleDegrees) + "deg"),
        ]);

    /// <summary>The same question's picture.</summary>
    public string PictureAddress => "/mesh/moire.png?" + Query(Given.Select(given => (given.Key, given.Value)));

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    /// <param name="onHand">The shop's meshes, held against it where no others were typed.</param>
    public MoireAnswer Answer(IReadOnlyList<MeshFabric> onHand)
    {
        var answer = MoireQuestion.Answer(new GivenTexts(Given));
        return answer.Meshes.Count > 0 || onHand.Count == 0 ? answer : answer with { Meshes = MoireSearch.Meshes(answer.Asked, onHand) };
    }

    private static string Query(IEnumerable<(string Name, string Value)> given) =>
        string.Join('&', given.Select(one => $"{one.Name}={Uri.EscapeDataString(one.Value)}"));

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>The form says degrees and percent itself: a bare number there is one.</summary>
    private static string Typed(QuestionField field, string text) => text.Length == 0 || !char.IsAsciiDigit(text[^1])
        ? text
        : field == MoireQuestion.Angle || field == MoireQuestion.MeshAngle ? text + "deg" : field == MoireQuestion.Tone ? text + "%" : text;
}
