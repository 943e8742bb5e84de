using Silkwright.Estimates;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Shelf;

public sealed class ShelfReaderTests
{
    private const string Right =
        """
        {"emulsions": [{"id": "A", "fixedCostPerMonth": 60, "keptToday": true, "switchingCostPerMonth": 4, "minimumScreensPerMonth": 10, "gramsPerScreen": 20, "containers": [{"grams": 900, "price": 30}, {"grams": 4500, "price": 120, "fixedCostPerMonth": 7}]}, {"id": "B", "fixedCostPerMonth": 40}],
         "jobs": [{"id": "Tees", "screensPerMonth": 40, "costs": {"A": 6.5, "B": 7}, "mustStayOn": "A", "gramsPerScreen": {"A": 25}}],
         "most": 2, "scenarios": [{"name": "season", "weight": 2, "screensPerMonth": {"Tees": 80}}]}
        """;

    [Fact]
    public void A_right_document_keeps_what_it_says()
    {
        var shelf = ShelfReader.Read(Right, "case.json");
        Assert.Equal(("A", 60, 10, true, 4), (shelf.Emulsions[0].Id, shelf.Emulsions[0].FixedCostPerMonth, shelf.Emulsions[0].MinimumScreensPerMonth, shelf.Emulsions[0].KeptToday, shelf.Emulsions[0].SwitchingCostPerMonth));
        Assert.Equal(("Tees", 40, "A"), (shelf.Jobs[0].Id, shelf.Jobs[0].ScreensPerMonth, shelf.Jobs[0].MustStayOn));
        Assert.Equal(7, shelf.Jobs[0].Costs["B"]);
        Assert.Equal([(900, 30, 0), (4500, 120, 7)], shelf.Emulsions[0].Containers.Select(size => (size.Grams, size.Price, size.FixedCostPerMonth)));
        Assert.Equal((20, 25), (shelf.Emulsions[0].GramsPerScreen, shelf.Jobs[0].GramsPerScreen["A"]));
        Assert.Equal(2, shelf.Most);
        Assert.Equal(("season", 2, 80), (shelf.Scenarios[0].Name, shelf.Scenarios[0].Weight, shelf.Scenarios[0].ScreensPerMonth["Tees"]));
    }

    [Theory]
    [InlineData("\"id\": \"B\"", "\"id\": \"A\"", "emulsions", "more than once")]
    [InlineData("\"fixedCostPerMonth\": 40", "\"fixedCostPerMonth\": -40", "emulsions[1].fixedCostPerMonth", "outside 0")]
    [InlineData("\"fixedCostPerMonth\": 40", "\"fixedCostPerMonth\": \"cheap\"", "emulsions[1].fixedCostPerMonth", "must be a number")]
    [InlineData("\"A\": 6.5", "\"A\": -6.5", "jobs[0].costs.A", "outside 0")]
    [InlineData("\"A\": 6.5", "\"A\": 1e999", "jobs[0].costs.A", "outside 0")]
    [InlineData("\"A\": 6.5", "\"A\": null", "jobs[0].costs.A", "missing")]
    [InlineData("\"B\": 7", "\"C\": 7", "jobs[0].costs", "No emulsion is called 'C'")]
    [InlineData("\"mustStayOn\": \"A\"", "\"mustStayOn\": \"C\"", "jobs[0].mustStayOn", "No emulsion is called 'C'")]
    [InlineData("\"A\": 6.5, ", "", "jobs[0].costs", "must stay on 'A'")]
    [InlineData("\"most\": 2", "\"most\": 0", "most", "outside 1")]
    [InlineData("\"most\": 2", "\"most\": 1.5", "most", "whole number")]
    [InlineData("{\"Tees\": 80}", "{\"Caps\": 80}", "scenarios[0].screensPerMonth", "No job is called 'Caps'")]
    [InlineData("\"weight\": 2", "\"weight\": 0", "scenarios[0].weight", "outside")]
    [InlineData("\"screensPerMonth\": 40, ", "", "jobs[0].screensPerMonth", "missing")]
    [InlineData("\"grams\": 4500", "\"grams\": 900", "emulsions[0].containers", "more than once")]
    [InlineData("\"grams\": 4500", "\"grams\": 0", "emulsions[0].containers[1].grams", "outside 1")]
    [InlineData("\"price\": 120, ", "", "emulsions[0].containers[1].price", "missing")]
    [InlineData("{\"A\": 25}", "{\"C\": 25}", "jobs[0].gramsPerScreen", "No emulsion is called 'C'")]
    [InlineData("\"emulsions\"", "\"emulsion\"", "emulsions", "1 to 1000")]
    public void A_fault_says_what_and_where(string right, string wrong, string where, string what)
    {
        var faults = Assert.Throws<InputProblemException>(() => ShelfReader.Read(Right.Replace(right, wrong, StringComparison.Ordinal), "case.json")).Problems;
        Assert.Contains(faults, fault => fault.Where == $"case.json: {where}" && fault.What.Contains(what, StringComparison.Ordinal) && fault.Remedy.Length > 0);
    }

    [Theory]
    [InlineData("\"A\": 6.5", "\"A\": 6.5, \"A\": 7", "twice")]
    [InlineData("\"A\": 6.5", "\"\\ud800\": 6.5", "half a character")]
    public void A_name_that_cannot_stand_is_told(string right, string wrong, string what)
    {
        var fault = Assert.Single(Assert.Throws<InputProblemException>(() => ShelfReader.Read(Right.Replace(right, wrong, StringComparison.Ordinal), "case.json")).Problems);
        Assert.Equal("case.json", fault.Where);
        Assert.Contains(what, fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_are_told_at_once()
    {
        var wrong = Right.Replace("60", "-60", StringComparison.Ordinal).Replace("\"B\": 7", "\"C\": 7", StringComparison.Ordinal).Replace("\"most\": 2", "\"most\": -1", StringComparison.Ordinal);
        Assert.Equal(3, Assert.Throws<InputProblemException>(() => ShelfReader.Read(wrong, "case.json")).Problems.Count);
    }
}
