using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Tests.Emulsion;

public sealed class WashResistanceTests
{
    /// <summary>Strong cleaners: diazo fair to good, dual-cure good, photopolymer swells. Common practice, no source.</summary>
    [Theory]
    [InlineData(EmulsionFamily.Diazo, ResistanceGrade.Fair)]
    [InlineData(EmulsionFamily.DualCure, ResistanceGrade.Good)]
    [InlineData(EmulsionFamily.Photopolymer, ResistanceGrade.Fair)]
    [InlineData(EmulsionFamily.CapillaryFilm, ResistanceGrade.Fair)]
    public void Without_a_grade_the_family_answers_for_solvents(EmulsionFamily family, ResistanceGrade grade) =>
        Assert.Equal(grade, WashResistance.To(PressWash.Solvent, new StencilEmulsion { Id = "any", Family = family })!.Grade);

    [Theory]
    [InlineData(ResistanceGrade.Poor)]
    [InlineData(ResistanceGrade.Fair)]
    [InlineData(ResistanceGrade.Good)]
    public void A_given_grade_decides_and_keeps_its_ground(ResistanceGrade grade)
    {
        var emulsion = new StencilEmulsion { Id = "any", Family = EmulsionFamily.DualCure, ResistsCleaner = new(grade, Ground.MeasuredHere) };
        var answer = WashResistance.To(PressWash.Solvent, emulsion)!;

        Assert.Equal((grade, Ground.MeasuredHere), (answer.Grade, answer.Ground));
    }

    /// <summary>A damp cloth is no soak: water shortens a life, it forbids nothing. Our own judgement.</summary>
    [Fact]
    public void Wiping_with_water_never_rules_out()
    {
        var emulsion = new StencilEmulsion { Id = "any", Family = EmulsionFamily.Photopolymer, Resists = [InkKind.Plastisol] };

        Assert.Equal(ResistanceGrade.Fair, WashResistance.To(PressWash.Water, emulsion)!.Grade);
        Assert.Equal(ResistanceGrade.Good, WashResistance.To(PressWash.Water, emulsion with { Resists = [InkKind.WaterBased] })!.Grade);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(PressWash.None)]
    public void Without_a_wash_there_is_nothing_to_stand(PressWash? wash) =>
        Assert.Null(WashResistance.To(wash, new StencilEmulsion { Id = "any", Family = EmulsionFamily.Diazo }));

    [Fact]
    public void Of_a_film_and_what_it_is_laid_with_the_weaker_gives_way()
    {
        var film = new StencilEmulsion { Id = "film", Family = EmulsionFamily.CapillaryFilm, ResistsCleaner = new(ResistanceGrade.Good, Ground.Datasheet) };
        var laying = new StencilEmulsion { Id = "liquid", Family = EmulsionFamily.DualCure, ResistsCleaner = new(ResistanceGrade.Poor, Ground.Datasheet) };

        Assert.Equal(ResistanceGrade.Poor, WashResistance.To(PressWash.Solvent, film with { LaidWith = laying })!.Grade);
    }
}
