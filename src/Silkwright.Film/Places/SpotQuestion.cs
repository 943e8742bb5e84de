using Silkwright.Contracts;
using Silkwright.Film.Measuring;
using Silkwright.Plans;

namespace Silkwright.Film.Places;

/// <summary>A spot of a film, and what it is held against: <c>x=12.5mm&amp;y=40mm&amp;mesh=61/cm,64um</c>.</summary>
/// <param name="XMm">From the film's left. [mm]</param>
/// <param name="YMm">From its top. [mm]</param>
/// <param name="Held">What mesh and stencil hold; none where no mesh is given.</param>
public sealed record SpotQuestion(double XMm, double YMm, HeldWidths? Held)
{
    public static readonly QuantityField X = new("x", QuantityKind.Length, "how far from the film's left edge") { Least = 0, Required = true };

    public static readonly QuantityField Y = new("y", QuantityKind.Length, "how far from its top edge") { Least = 0, Required = true };

    private static readonly QuantityField Stencil = new("stencil-holds", QuantityKind.Thickness, "the finest line that the stencil holds open, where it is known; taken with a mesh") { Above = 0 };

    public static IReadOnlyList<QuestionField> Fields => [X, Y, FilmQuestion.MeshText, Stencil];

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static SpotQuestion Read(GivenTexts given)
    {
        ArgumentNullException.ThrowIfNull(given);
        var (x, y) = (given.ReadRequired(X), given.ReadRequired(Y));
        var (mesh, stencil) = (FilmQuestion.MeshOf(given), given.Read(Stencil));
        given.ThrowIfAny();
        return new SpotQuestion(x, y, mesh is null ? null : HeldWidths.Of(mesh.SmallestLineUm.Value, mesh.SmallestDotUm.Value, stencil));
    }
}
