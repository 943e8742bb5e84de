using System.Text.Json.Nodes;

namespace Silkwright.Cli.Tests.Schema;

/// <summary>The check itself must bite.</summary>
public sealed class SchemaCheckTests
{
    private const string Air =
        """
        {"schema":"silkwright/dry-air/1","temperatureCelsius":25,"humidityPercent":50,"pressurePa":101325,"wetBulbCelsius":18,
         "humidityRatioGPerKg":9.9,"vapourPressurePa":1584,"saturationPressurePa":3169,"enthalpyKjPerKg":50,"notes":[]}
        """;

    [Fact]
    public void A_right_document_has_no_faults() => Assert.Empty(SchemaCheck.Faults("dry-air.json", JsonNode.Parse(Air)!));

    [Theory]
    [InlineData("\"pressurePa\":101325", "\"pressure\":101325")]
    [InlineData("\"wetBulbCelsius\":18", "\"wetBulbCelsius\":\"18\"")]
    [InlineData("\"humidityPercent\":50", "\"humidityPercent\":150")]
    [InlineData("dry-air/1", "dry-air/2")]
    [InlineData("\"notes\":[]", "\"notes\":[{\"ground\":\"model\"}]")]
    [InlineData("\"notes\":[]", "\"notes\":[{\"text\":\"x\",\"ground\":\"hearsay\"}]")]
    public void A_wrong_one_has(string right, string wrong) =>
        Assert.NotEmpty(SchemaCheck.Faults("dry-air.json", JsonNode.Parse(Air.Replace(right, wrong, StringComparison.Ordinal))!));
}
