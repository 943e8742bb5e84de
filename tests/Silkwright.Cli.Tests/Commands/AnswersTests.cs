using Silkwright.Cli.Tests.Schema;

namespace Silkwright.Cli.Tests.Commands;

/// <summary>Every verb that answers a question: one document that is as its schema says, and a table for people.</summary>
public sealed class AnswersTests
{
    private const string Ink = "ink --mesh 61/cm --thread 64um --eom 12um --coverage 35% --area 900cm2 --impressions 600";

    [Theory]
    [InlineData("mesh.json", "mesh --count 61/cm --thread 64um")]
    [InlineData("mesh.json", "mesh --count 230/in --thread 1.57mil --fabric-thickness 2.3mil")]
    [InlineData("mesh-moire.json", "mesh moire --count 61/cm --ruling 45/in --angle 22.5deg")]
    [InlineData("mesh-moire.json", "mesh moire --count 230/in --thread 40um --ruling 22/cm --angle 75deg --mesh-angle 7.5deg --knit-courses 20/cm --knit-wales 14/cm --tone 20% --viewing 1000mm --on-hand 61/64,77/55")]
    [InlineData("ink.json", Ink)]
    [InlineData("ink.json", Ink + " --ink water-based --transfer 60..85% --strokes 2 --density 1.2g/cm3 --volume-solids 40%")]
    [InlineData("expose-step.json", "expose step --seconds 60s --observed 5 --target 7")]
    [InlineData("expose-step.json", "expose step --units 120 --observed 8 --target 7 --density-per-step 0.3")]
    [InlineData("expose-curve.json", "expose curve --penetration-depth 70um --critical-dose 8mJ/cm2 --depth 57um")]
    [InlineData("expose-curve.json", "expose curve --penetration-depth 30..50um --critical-dose 20mJ/cm2 --bleaching 50..90% --bleach-dose 40mJ/cm2")]
    [InlineData("expose-window.json", "expose window --lamp ledArray --family dual-cure --count 120/cm --mesh-colour dyed --line 100um --gap 120um --eom 4..8um")]
    [InlineData("expose-window.json", "expose window --lamp tubeBank --mesh-colour white --line 40um")]
    [InlineData("expose-ladder.json", "expose ladder --lamp ledArray --mesh-colour dyed --line 100um --within 40%")]
    [InlineData("expose-ladder.json", "expose ladder --counts units --around 120 --setting 5 --coat-measured yes")]
    [InlineData("light-slab.json", "light slab --mua 10/cm --mus 90/cm --g 0.75 --n 1 --thickness 200um --photons 1e5 --seed 1")]
    [InlineData("light-edge.json", "light edge --count 120/cm --thread 34um --mesh-colour dyed --photons 2e4")]
    [InlineData("light-edge.json", "light edge --count 43/cm --thread 80um --mesh-angle 22.5deg --family diazo --eom 20um --squeegee-side 5um --mua 80/cm --mus 200/cm --g 0.8 --n 1.51 --lamp diodes --lamp-distance 20mm --lamp-pitch 4mm --slant 2deg --gap 5um --film-between 100um --film-n 1.6 --backing 60% --image gap --width 200um --photons 2e4 --seed 3")]
    [InlineData("dry-air.json", "dry air --temperature 25C --humidity 50%")]
    [InlineData("dry-air.json", "dry air --temperature 86F --humidity 0% --altitude 300m")]
    [InlineData("dry-time.json", "dry time --temperature 30C --humidity 35% --air-speed 0.5m/s --wet-thickness 60um --solids 40%")]
    [InlineData("dry-time.json", "dry time --temperature 24C --humidity 95% --wet-thickness 60..80um --solids 35% --family dual-cure --faces 1 --altitude 300m --safe-moisture 4%")]
    [InlineData("choose.json", "choose --ink water-based --run 2000 --pace 0.4 --light yellow --humidity 75%")]
    [InlineData("choose.json", "choose --ink plastisol --run 100 --ruling 55/in --garment black --temperature 73F")]
    public async Task The_document_is_as_its_schema_says_and_nothing_else_is_on_the_output(string schema, string line)
    {
        var run = await ShellRun.Of([.. line.Split(' '), "--json"]);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Empty(SchemaCheck.Faults(schema, run.Document));
    }

    [Theory]
    [InlineData("mesh --count 61/cm --thread 64um", "Open area")]
    [InlineData("mesh moire --count 120/cm --thread 34um --ruling 30/cm --angle 0deg --knit-courses 20/cm --knit-wales 14/cm --on-hand 61/64,77/55", "quietest first")]
    [InlineData(Ink, "The run takes")]
    [InlineData("expose step --seconds 60s --observed 5 --target 7", "WARNING before exposing")]
    [InlineData("expose window --lamp tubeBank --mesh-colour white --line 40um", "What would open it")]
    [InlineData("expose ladder --lamp ledArray --mesh-colour dyed --line 100um", "gets in all")]
    [InlineData("expose curve --penetration-depth 70um --critical-dose 8mJ/cm2 --depth 57um", "reciprocity")]
    [InlineData("light slab --mua 10/cm --mus 90/cm --thickness 8mil --photons 1e5", "not scattered")]
    [InlineData("light edge --count 120/cm --thread 34um --photons 2e4", "Undercut")]
    [InlineData("dry air --temperature 25C --humidity 50%", "Dew point")]
    [InlineData("dry time --temperature 30C --humidity 35% --wet-thickness 60um --solids 40%", "Safe to expose")]
    [InlineData("choose --ink discharge --run 400 --light white", "RULED OUT")]
    [InlineData("choose --ink water-based --run 2000", "STOP IF")]
    public async Task A_table_for_people_fits_100_columns(string line, string says)
    {
        var run = await ShellRun.Of(line.Split(' '));
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains(says, run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), row => Assert.InRange(row.TrimEnd().Length, 0, Surroundings.UsualColumns));
    }

    /// <summary>Geometry of square openings: 120 threads/cm of 34 µm leave 10000/120 - 34 = 49.333 µm, (0.592)² = 35.05 %.</summary>
    [Fact]
    public async Task A_mesh_has_the_geometry_of_square_openings()
    {
        var document = (await ShellRun.Of("mesh", "--count", "120/cm", "--thread", "34um", "--json")).Document;
        Assert.Equal(83.333, document["pitchUm"]!.GetValue<double>(), 0.001);
        Assert.Equal(49.333, document["openingUm"]!.GetValue<double>(), 0.001);
        Assert.Equal(35.05, document["openAreaPercent"]!.GetValue<double>(), 0.01);
    }

    /// <summary>The trade's rule takes the square root of 2 a step (common practice, no source): two steps double the light, within 0.3 %.</summary>
    [Fact]
    public async Task Two_steps_of_the_wedge_double_the_exposure()
    {
        var document = (await ShellRun.Of("expose", "step", "--seconds", "60s", "--observed", "5", "--target", "7", "--json")).Document;
        Assert.Equal(120, document["seconds"]!.GetValue<double>(), 120 * 0.003);
    }

    [Fact]
    public async Task Machine_units_stay_units()
    {
        var document = (await ShellRun.Of("expose", "step", "--units", "120", "--observed", "7", "--target", "7", "--json")).Document;
        Assert.Equal(120, document["units"]!.GetValue<double>(), 1e-9);
        Assert.False(document.ContainsKey("seconds"));
    }

    /// <summary>By definition, whatever the model: at 100 % relative humidity air, dew point and wet bulb are one temperature.</summary>
    [Fact]
    public async Task Saturated_air_is_at_its_dew_point()
    {
        var document = (await ShellRun.Of("dry", "air", "--temperature", "20C", "--humidity", "100%", "--json")).Document;
        Assert.Equal(20, document["dewPointCelsius"]!.GetValue<double>(), 0.01);
        Assert.Equal(20, document["wetBulbCelsius"]!.GetValue<double>(), 0.01);
    }

    [Fact]
    public async Task Both_unit_systems_ask_the_same_question()
    {
        var metric = (await ShellRun.Of("mesh", "--count", "100/cm", "--thread", "50.8um", "--json")).Document;
        var us = (await ShellRun.Of("mesh", "--count", "254/in", "--thread", "2mil", "--json")).Document;
        Assert.Equal(metric["openingUm"]!.GetValue<double>(), us["openingUm"]!.GetValue<double>(), 1e-6);
    }
}
