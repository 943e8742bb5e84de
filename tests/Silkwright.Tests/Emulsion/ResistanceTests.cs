using CsCheck;
using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Tests.Emulsion;

public sealed class ResistanceTests
{
    private static readonly EmulsionFamily[] Families = Enum.GetValues<EmulsionFamily>();
    private static readonly InkKind[] Inks = Enum.GetValues<InkKind>();

    [Fact]
    public void An_emulsions_own_list_decides_whatever_its_family() =>
        Gen.Select(Gen.Int[0, Families.Length - 1], Gen.Int[0, Inks.Length - 1], Gen.Int[0, 31]).Sample((family, ink, listed) =>
        {
            var list = Inks.Where((_, i) => (listed & (1 << i)) != 0).ToArray();
            var answer = Resistance.To(Inks[ink], new StencilEmulsion { Id = "any", Family = Families[family], Resists = list });
            return answer.Ground == Ground.Datasheet
                && answer.Grade == (list.Contains(Inks[ink]) ? ResistanceGrade.Good : ResistanceGrade.Poor);
        });

    /// <summary>
    /// A plastisol-only emulsion breaks down in water-based or discharge ink; a dual-cure serves most ink kinds but is not very
    /// water-resistant. Common practice, no source, but that photopolymer is called good for most inks except water-based, by a
    /// trade article.
    /// </summary>
    [Theory]
    [InlineData(EmulsionFamily.Photopolymer, InkKind.Plastisol, ResistanceGrade.Good)]
    [InlineData(EmulsionFamily.Photopolymer, InkKind.WaterBased, ResistanceGrade.Poor)]
    [InlineData(EmulsionFamily.Photopolymer, InkKind.Discharge, ResistanceGrade.Poor)]
    [InlineData(EmulsionFamily.DualCure, InkKind.Plastisol, ResistanceGrade.Good)]
    [InlineData(EmulsionFamily.DualCure, InkKind.Solvent, ResistanceGrade.Good)]
    [InlineData(EmulsionFamily.DualCure, InkKind.WaterBased, ResistanceGrade.Fair)]
    [InlineData(EmulsionFamily.Diazo, InkKind.WaterBased, ResistanceGrade.Fair)]
    [InlineData(EmulsionFamily.CapillaryFilm, InkKind.Discharge, ResistanceGrade.Fair)]
    public void Without_a_list_the_family_answers(EmulsionFamily family, InkKind ink, ResistanceGrade grade)
    {
        var answer = Resistance.To(ink, new StencilEmulsion { Id = "any", Family = family });

        Assert.Equal(grade, answer.Grade);
        Assert.Equal(Ground.CommonPractice, answer.Ground);
    }

    [Fact]
    public void Every_answer_gives_a_sentence_as_its_reason()
    {
        foreach (var family in Families)
        {
            foreach (var ink in Inks)
                Assert.EndsWith(".", Resistance.To(ink, new StencilEmulsion { Id = "any", Family = family }).Reason, StringComparison.Ordinal);
        }
    }
}
