using System.Reflection;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Tests.Contracts;

/// <summary>What help, faults and HTTP show as the way to write a field is taken there: somebody will type it as it stands.</summary>
public class QuestionExamplesTests
{
    public static TheoryData<string, QuantityField> Quantities
    {
        get
        {
            var data = new TheoryData<string, QuantityField>();
            foreach (var question in typeof(QuestionField).Assembly.GetTypes().Where(type => type.Name.EndsWith("Question", StringComparison.Ordinal)))
            {
                foreach (var quantity in question.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic).Select(member => member.GetValue(null)).OfType<QuantityField>())
                    data.Add($"{question.Name} {quantity.Name}", quantity);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Quantities))]
    public void An_example_is_within_the_range_of_its_field(string name, QuantityField field)
    {
        var problems = new ProblemList();
        var value = QuantityText.Read(field.Example, field.Kind, name, problems);
        Assert.Empty(problems.Problems);
        Assert.True(field.Allows(value!.Value), $"{name}: {field.Example} is not {field.Range}");
    }

    /// <summary>The ladder of kinds has one example for all numbers without a unit; that many threads, photons or dots an inch are nobody's.</summary>
    [Theory]
    [MemberData(nameof(Quantities))]
    public void A_number_without_a_unit_has_an_example_of_its_own(string name, QuantityField field) =>
        Assert.True(field.Kind != QuantityKind.Number || field.Example != QuantityKind.Number.Example || name.EndsWith(" observed", StringComparison.Ordinal), name);
}
