using System.Globalization;
using System.Text;
using Silkwright.Estimates;

namespace Silkwright.Tests.Coating.Learning;

/// <summary>Draws docs/images/coat-learning.svg where SILKWRIGHT_PICTURES names the folder to draw into.</summary>
internal static class CoatPicture
{
    private const double PerUm = 12, MostUm = 40, Left = 60, Top = 20, Shown = 300;

    public static void Draw(IReadOnlyList<(double ReadUm, Estimate Expected)> asked, params (string Name, double ErrorUm)[] errors)
    {
        if (Environment.GetEnvironmentVariable("SILKWRIGHT_PICTURES") is not { Length: > 0 } folder)
            return;
        var svg = new StringBuilder();
        Add($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 900 560\" font-family=\"sans-serif\" font-size=\"15\" fill=\"#1d1a16\"><rect width=\"900\" height=\"560\" fill=\"#f7f2e7\"/>");
        for (var um = 0; um <= MostUm; um += 10)
        {
            Add($"<path d=\"M{X(um)} {Y(0)}V{Y(MostUm)}M{X(0)} {Y(um)}H{X(MostUm)}\" stroke=\"#cfc6b4\" fill=\"none\"/>");
            Add($"<text x=\"{X(um)}\" y=\"{Y(0) + 20}\" text-anchor=\"middle\">{um}</text><text x=\"{X(0) - 8}\" y=\"{Y(um) + 5}\" text-anchor=\"end\">{um}</text>");
        }

        foreach (var (read, expected) in asked.Where((_, i) => i % Math.Max(1, (int)(asked.Count / Shown)) == 0).Where(one => one.ReadUm <= MostUm && one.Expected.Value <= MostUm))
        {
            var held = read >= expected.Low && read <= expected.High;
            Add($"<path d=\"M{X(read)} {Y(expected.Low)}V{Y(Math.Min(MostUm, expected.High))}\" stroke=\"{(held ? "#8a7f6b" : "#a3281e")}\" stroke-width=\"{(held ? 1 : 2.5)}\" opacity=\"0.6\"/>");
            Add($"<circle cx=\"{X(read)}\" cy=\"{Y(expected.Value)}\" r=\"2.6\" fill=\"{(held ? "#1d1a16" : "#a3281e")}\"/>");
        }

        Add($"<path d=\"M{X(0)} {Y(0)}L{X(MostUm)} {Y(MostUm)}\" stroke=\"#1d1a16\" stroke-dasharray=\"6 4\"/>");
        Add($"<text x=\"{X(MostUm / 2)}\" y=\"{Y(0) + 42}\" text-anchor=\"middle\">read, µm over the mesh</text><text transform=\"translate(18 {Y(MostUm / 2)}) rotate(-90)\" text-anchor=\"middle\">expected, with nine of ten</text>");
        Add($"<text x=\"600\" y=\"60\" font-weight=\"bold\">Mean error of a new reading</text>");
        for (var i = 0; i < errors.Length; i++)
            Add($"<text x=\"600\" y=\"{95 + (60 * i)}\">{errors[i].Name}: {errors[i].ErrorUm:0.00} µm</text><rect x=\"600\" y=\"{103 + (60 * i)}\" width=\"{100 * errors[i].ErrorUm}\" height=\"16\" fill=\"#6b5d3f\"/>");
        Add($"<text x=\"600\" y=\"310\">{100.0 * asked.Count(one => one.ReadUm >= one.Expected.Low && one.ReadUm <= one.Expected.High) / asked.Count:0.0} % of {asked.Count} new readings fell</text><text x=\"600\" y=\"332\">inside their interval; the others in red.</text><text x=\"600\" y=\"354\">{Math.Min(Shown, asked.Count):0} of them are drawn.</text></svg>");
        File.WriteAllText(Path.Combine(folder, "coat-learning.svg"), svg.ToString());

        void Add(FormattableString text) => svg.Append(text.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    private static double X(double um) => Math.Round(Left + (PerUm * um), 1);

    private static double Y(double um) => Math.Round(Top + (PerUm * (MostUm - um)), 1);
}
