using MathNet.Numerics.LinearAlgebra;
using Silkwright.Coating.Learning;
using Silkwright.Estimates;
using Silkwright.Statistics.Mixed;

namespace Silkwright.Contracts;

/// <summary>Reads what other shops' readings taught: docs/schema/coat-experience.json. It comes from elsewhere, so that all of it is held against what it must be.</summary>
public static class CoatExperienceReader
{
    /// <summary>Emulsions and meshes of any trade fit in. The work grows with its cube.</summary>
    public const int MostEffects = 400;

    private const double Most = 1e15;
    private const int MostParts = 100_000;
    private const int MostReadings = 100_000_000;

    /// <summary>No readings move a spread's ratio farther than this many times e from what is believed.</summary>
    private const double MostMoved = 20;

    /// <summary>How far below nothing a computer's rounding may bring what is nothing.</summary>
    private const double Rounding = 1e-9;

    /// <param name="json">The document.</param>
    /// <param name="where">The file's name, for messages.</param>
    /// <exception cref="InputProblemException">Every fault of the document.</exception>
    public static CoatExperience Read(string json, string where)
    {
        var problems = new ProblemList();
        var root = DocumentField.Root(json, where, problems);
        problems.ThrowIfAny();
        var schema = root["schema"].RequiredText();
        if (schema.Length > 0 && schema != CoatExperienceDocument.Schema)
            problems.Add($"This is '{schema}'.", root["schema"].Path, $"Give a file of coat experience, {CoatExperienceDocument.Schema}: silkwright coat experience makes one.");
        problems.ThrowIfAny();
        root.TakeOnly(["schema", "readings", "shops", "effects", "squares", "spreads", "parts", "invented"]);
        var entries = root["effects"].Entries(MostEffects);
        var count = entries.Count;
        var effects = entries.Select(Effect).ToArray();
        double[] pull = [.. entries.Select(entry => entry["pull"].RequiredNumber("1", -Most, Most))];
        var precision = new double[count * count];
        for (var i = 0; i < count; i++)
        {
            var row = entries[i]["precision"].Entries(MostEffects);
            if (row.Count != i + 1)
                problems.Add($"This must be {i + 1} numbers.", entries[i]["precision"].Path, "Give one for each effect down to this one.");
            for (var j = 0; j < Math.Min(row.Count, i + 1); j++)
                precision[(i * count) + j] = precision[(j * count) + i] = row[j].RequiredNumber("1", -Most, Most);
        }

        var experience = new CoatExperience
        {
            Effects = effects,
            Precision = precision,
            Pull = pull,
            Squares = root["squares"].RequiredNumber("1", 0, Most),
            Readings = (int)root["readings"].RequiredCount(CoatExperience.LeastReadings, MostReadings),
            Shops = (int)root["shops"].RequiredCount(1, MostReadings),
            Spreads = Spreads(root["spreads"], problems),
            Parts = [.. root["parts"].Entries(MostParts).Select(part => part.RequiredText())],
        };
        if (experience.Parts.Count == 0)
            root["parts"].Missing("the marks of what was added up, as the file had them");
        else if (experience.Parts.Distinct().Count() < experience.Parts.Count)
            problems.Add("One part is there twice.", root["parts"].Path, "Take the file as it was made.");
        if (effects.Distinct().Count() < count)
            problems.Add("One effect is there twice.", root["effects"].Path, "Take the file as it was made.");
        problems.ThrowIfAny();
        if (!CanBe(experience) || !SpreadsCanBe(experience))
            problems.Add("No readings can have taught this: the numbers contradict each other.", where, "Take the file as it was made.");
        problems.ThrowIfAny();
        return experience;

        SharedEffect Effect(DocumentField entry)
        {
            entry.TakeOnly(["group", "name", "deviations", "standardError", "pull", "precision"]);
            var effect = new SharedEffect(entry["group"].RequiredText(), entry["name"].RequiredText());
            if (effect is not ({ Group: "" } or { Name: "" }) && !CoatExperience.Knows(effect))
                problems.Add($"No effect of all shops is called {effect.Group} {effect.Name}.", entry.Path, "The groups are constant, emulsion and mesh; constants have the names of docs/engines/coating.md.");
            if (effect.Name.Length > InputLimits.LongestCatalogueName)
                problems.Add("This name is too long.", entry["name"].Path, $"Write {InputLimits.LongestCatalogueName} characters at most.");
            return effect;
        }
    }

    private static Dictionary<string, RatioTold> Spreads(DocumentField field, ProblemList problems)
    {
        var spreads = new Dictionary<string, RatioTold>();
        foreach (var entry in field.Entries(CoatExperience.Groups.Count))
        {
            entry.TakeOnly(["group", "precision", "pull"]);
            var group = entry["group"].RequiredText();
            if (group.Length > 0 && !CoatExperience.Groups.Contains(group))
                problems.Add($"No group of coats is called {group}.", entry["group"].Path, $"The groups are {string.Join(", ", CoatExperience.Groups)}.");
            else if (!spreads.TryAdd(group, new RatioTold(entry["precision"].RequiredNumber("1", 0, Most), entry["pull"].RequiredNumber("1", -Most, Most))))
                problems.Add($"The spread of {group} is there twice.", entry.Path, "Take the file as it was made.");
        }

        return spreads;
    }

    /// <summary>Products of real columns: the matrix bends nowhere downwards, and the squares hold what the effects explain.</summary>
    private static bool CanBe(CoatExperience experience)
    {
        var count = experience.Effects.Count;
        if (experience.Shops > experience.Readings || experience.Squares > experience.Readings * InputLimits.MostEomUm * InputLimits.MostEomUm)
            return false;
        if (count == 0)
            return true;
        var all = Matrix<double>.Build.Dense(count + 1, count + 1, (i, j) =>
            i < count && j < count ? experience.Precision[(i * count) + j] : i < count ? experience.Pull[i] : j < count ? experience.Pull[j] : experience.Squares);
        var least = all.Evd(Symmetricity.Symmetric).EigenValues.Min(value => value.Real);
        return least >= -Rounding * Math.Max(1, all.Diagonal().AbsoluteMaximum());
    }

    /// <summary>What is believed of each spread once this is known stays within what a computer, and a shop, can be.</summary>
    private static bool SpreadsCanBe(CoatExperience experience) => CoatLevels.Terms.Where(term => !term.Shared)
        .All(term => Math.Abs(Math.Log(experience.Believed(term.Name, term.Prior).Ratio / term.Prior.Ratio)) <= MostMoved);
}
