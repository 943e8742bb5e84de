using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Silkwright.Light.Surface;

/// <summary>A surface as a file: silkwright/light-surface/1, docs/schema.</summary>
public static class SurfaceFile
{
    private const string Schema = "silkwright/light-surface/1";

    /// <summary>A term a line: coefficient, then feature:degree.</summary>
    public static string Write(LightSurface surface)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{{\n  \"schema\": \"{Schema}\",\n  \"places\": {surface.Build.Places},\n  \"photons\": {surface.Build.Photons},\n  \"seed\": {surface.Build.Seed},\n  \"range\": [\n");
        text.AppendJoin(",\n", SurfaceRange.Axes.Select(axis =>
            string.Create(CultureInfo.InvariantCulture, $"    {{ \"name\": \"{axis.Name}\", \"unit\": \"{axis.Unit}\", \"low\": {axis.Low}, \"high\": {axis.High} }}")));
        text.Append("\n  ],\n  \"figures\": [\n");
        text.AppendJoin(",\n", surface.Polynomials.Select((polynomial, i) => string.Create(
            CultureInfo.InvariantCulture,
            $"    {{\n      \"name\": \"{SurfaceFigures.Names[i]}\",\n      \"logError90\": {surface.LogErrors[i]:0.####},\n      \"terms\": [\n{string.Join(",\n", Lines(polynomial))}\n      ]\n    }}")));
        return text.Append("\n  ]\n}\n").ToString();
    }

    /// <exception cref="FormatException">Not a surface of this version.</exception>
    public static LightSurface Read(string text)
    {
        using var document = JsonDocument.Parse(text);
        var root = document.RootElement;
        if (root.GetProperty("schema").GetString() != Schema)
            throw new FormatException($"Not a surface of the kind {Schema}.");
        var figures = root.GetProperty("figures").EnumerateArray().ToDictionary(figure => figure.GetProperty("name").GetString()!);
        return new LightSurface(
            new SurfaceBuild(root.GetProperty("places").GetInt32(), root.GetProperty("photons").GetInt64(), root.GetProperty("seed").GetUInt64()),
            [.. SurfaceFigures.Names.Select(name => Polynomial(figures[name].GetProperty("terms")))],
            [.. SurfaceFigures.Names.Select(name => figures[name].GetProperty("logError90").GetDouble())]);
    }

    private static IEnumerable<string> Lines(SurfacePolynomial polynomial) => polynomial.Terms.Zip(polynomial.Coefficients, (term, coefficient) =>
        string.Create(CultureInfo.InvariantCulture, $"        \"{coefficient:G6}{Factor(term.A)}{Factor(term.B)}{Factor(term.C)}\""));

    private static string Factor(int place) => place == 0 ? "" : $" {place / SurfaceTerms.Degrees}:{place % SurfaceTerms.Degrees}";

    private static SurfacePolynomial Polynomial(JsonElement terms)
    {
        var read = terms.EnumerateArray().Select(term => term.GetString()!.Split(' ')).ToArray();
        return new(
            [.. read.Select(words => new SurfaceTerm(Place(words, 1), Place(words, 2), Place(words, 3)))],
            [.. read.Select(words => double.Parse(words[0], CultureInfo.InvariantCulture))]);
    }

    private static int Place(string[] words, int word)
    {
        if (words.Length <= word)
            return 0;
        var factor = words[word].Split(':');
        return SurfaceTerms.Place(int.Parse(factor[0], CultureInfo.InvariantCulture), int.Parse(factor[1], CultureInfo.InvariantCulture));
    }
}
