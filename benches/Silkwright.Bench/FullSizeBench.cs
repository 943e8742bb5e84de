using System.ComponentModel;
using System.Globalization;

namespace Silkwright.Bench;

/// <summary>How fast and in how little memory a film of full size is measured, beside libraries for any picture.</summary>
internal static class FullSizeBench
{
    /// <summary>Rows of the crop that openings are compared on: every inch of the film is alike, so times go up with area.</summary>
    private const int CropRows = 4800;

    /// <summary>Rows of the crop for the six openings behind the widths of the image, which the peer is slow at.</summary>
    private const int ThinCropRows = 600;

    private static readonly string[] Compared = ["9", "33"];

    /// <summary>Discs of 100 to 1000 µm at 2400 dpi and a pixel more: what the widths of the image are measured by.</summary>
    private static readonly string[] Widths = ["10", "15", "19", "29", "48", "95"];

    private static readonly int[] Heights = [2_604, 13_020, FullSizeFilm.HeightPx, 104_160];

    private static readonly string Films = Path.Combine(AppContext.BaseDirectory, "films");
    private static readonly string Peers = Path.Combine(AppContext.BaseDirectory, "peers");

    public static async Task RunAsync()
    {
        var film = FullSizeFilm.Drawn(Films, FullSizeFilm.HeightPx);
        Console.WriteLine($"One film of {FullSizeFilm.WidthPx} x {FullSizeFilm.HeightPx} px, CCITT G4, {new FileInfo(film).Length / 1e6:0.0} MB: halftones, lines and lettering. Each line a process of its own,");
        Console.WriteLine("time from its start to its end, the quicker of two; CPU is all its threads together.");
        Console.WriteLine();
        Console.WriteLine($"{"what",-58}{"s",8}{"CPU, s",9}{"MiB",7}");
        var count = await QuickerAsync("film-count", film);
        Tell("read, coverage, components of image and gap", count[0], count[2], count[3]);
        var whole = await QuickerAsync("film-measure", film);
        Tell("everything", whole[0], whole[2], whole[3]);
        var small = FullSizeFilm.Drawn(Films, Heights[0]);
        var stages = (await ProgramRun.OfAsync(Environment.ProcessPath!, "film-stages", small, film)).Output.Trim().Split(' ');
        Console.WriteLine();
        Console.WriteLine($"Stages of everything, all compiled before: reading with components {stages[0]} s, zones with ruling, angle and tones {stages[1]} s, finest parts {stages[2]} s, widths {stages[3]} s.");
        var (tiles, heat) = (await OwnAsync("film-tiles", film), await OwnAsync("film-heat", film));
        Console.WriteLine($"Looked at: one pass of {tiles[0]} s keeps {tiles[6]} MB; then a tile takes {tiles[2]} ms (at most {tiles[1]}), a spot's width {tiles[4]} ms (at most {tiles[3]}); {tiles[5]} MiB. Its heat: {heat[0]} s, {heat[1]} MiB.");
        var dots = await OwnAsync("film-measure", FullSizeFilm.Drawn(Films, FullSizeFilm.HeightPx, FullSizeArt.Halftone));
        Console.WriteLine($"A film of the same size that is one halftone of 65 lpi, {dots[4]} components of image and {dots[5]} of gap, without a narrow line anywhere: {dots[0]} s, {dots[2]} s of CPU, {dots[3]} MiB.");
        await AreasAsync();
        Console.WriteLine();
        await LeptonicaAsync(film, count);
        await OpenCvAsync(whole);
    }

    private static async Task AreasAsync()
    {
        Console.WriteLine();
        Console.WriteLine("Time as area grows: films of several heights, every inch alike, the work alone, all compiled before, the quicker of two runs or the quickest that a second has room for; how far from proportional to the full-size film.");
        await AreasAsync("With 224 fine dashes an inch, of image and of gap, so that each search ends at its 200th place:", FullSizeArt.Dashed);
        await AreasAsync("The film above. The small ones have no 200 places, and are searched on, up to 0.5 mm:", FullSizeArt.Mixed);
    }

    private static async Task AreasAsync(string what, FullSizeArt art)
    {
        Console.WriteLine(what);
        Console.WriteLine($"{"Gpx",8}{"count, s",11}{"off, %",9}{"everything, s",16}{"off, %",9}{"MiB",7}");
        var small = FullSizeFilm.Drawn(Films, Heights[0], art);
        var rows = new List<(double Area, double Count, double Whole, string MiB)>();
        foreach (var height in Heights)
        {
            var warm = (await ProgramRun.OfAsync(Environment.ProcessPath!, "film-warm", small, FullSizeFilm.Drawn(Films, height, art))).Output.Trim().Split(' ');
            rows.Add((FullSizeFilm.WidthPx * (double)height / 1e9, Number(warm[0]), Number(warm[1]), warm[2]));
        }

        var full = rows[Array.IndexOf(Heights, FullSizeFilm.HeightPx)];
        foreach (var (area, count, whole, mib) in rows)
            Console.WriteLine(Say($"{area,8:0.00}{count,11:0.000}{Off(count, full.Count, area),9:+0;-0;0}{whole,16:0.00}{Off(whole, full.Whole, area),9:+0;-0;0}{mib,7}"));

        double Off(double seconds, double fullSeconds, double area) => 100 * ((seconds / area / (fullSeconds / full.Area)) - 1);
    }

    private static async Task LeptonicaAsync(string film, string[] own)
    {
        var program = Path.Combine(Films, "components");
        if (await PeerAsync("gcc", "-O2", "-o", program, Path.Combine(Peers, "components.c"), "-llept") is null || await PeerAsync(program, film) is not { } lines)
        {
            Console.WriteLine("leptonica (Debian's libleptonica-dev, with gcc) is not here: components are not compared.");
            return;
        }

        var peer = lines[0].Split(' ');
        Console.WriteLine($"Components of image and gap with their places, the film of full size; leptonica's time without its reading, ours with it. Same number: {(peer[3] == own[4] && peer[4] == own[5] ? "yes" : "NO")}");
        Console.WriteLine($"{"",-12}{"s",8}{"CPU, s",9}{"MiB",7}");
        Console.WriteLine($"{"leptonica",-12}{peer[0],8}{peer[1],9}{peer[2],7}");
        Console.WriteLine(Say($"{"ours",-12}{own[1],8}{own[2],9}{own[3],7}   ratio {Number(peer[0]) / Number(own[1]):0.0}, of CPU {Number(peer[1]) / Number(own[2]):0.0}"));
    }

    private static async Task OpenCvAsync(string[] whole)
    {
        var crop = FullSizeFilm.Drawn(Films, CropRows);
        var thin = FullSizeFilm.Drawn(Films, ThinCropRows);
        var script = Path.Combine(Peers, "openings.py");
        Console.WriteLine();
        if (await PeerAsync("/usr/bin/python3", [script, crop, .. Compared]) is not { } lines || await PeerAsync("/usr/bin/python3", [script, thin, .. Widths]) is not { } six)
        {
            Console.WriteLine("OpenCV (Debian's python3-opencv) is not here: openings are not compared.");
            return;
        }

        var own = (await ProgramRun.OfAsync(Environment.ProcessPath!, ["film-open", crop, .. Compared])).Output.Split('\n');
        Console.WriteLine($"Opening of the image by one disc, OpenCV's morphologyEx on two threads and ours, both without reading, on {FullSizeFilm.WidthPx} x {CropRows} px");
        Console.WriteLine($"{"disc, px",10}{"OpenCV, s",12}{"CPU, s",9}{"ours, s",10}{"CPU, s",9}{"ratio",8}{"of CPU",8}   same pixels");
        for (var i = 0; i < Compared.Length; i++)
        {
            var (peer, ours) = (lines[i].Split(' '), own[i].Split(' '));
            Console.WriteLine(Say(
                $"{Compared[i],10}{peer[0],12}{peer[1],9}{ours[0],10}{ours[1],9}{Number(peer[0]) / Number(ours[0]),8:0.0}{Number(peer[1]) / Number(ours[1]),8:0.0}   {(peer[2] == ours[2] ? "yes" : "NO")}"));
        }

        Console.WriteLine($"MiB: OpenCV {lines[Compared.Length]} for the crop and its openings, ours {own[Compared.Length]} for the whole process.");
        var scale = (double)FullSizeFilm.HeightPx / ThinCropRows;
        var seconds = scale * six[..Widths.Length].Sum(line => Number(line.Split(' ')[0]));
        var mib = scale * Number(six[Widths.Length]);
        Console.WriteLine();
        Console.WriteLine(Say($"The six openings behind the widths of the image alone, OpenCV: {seconds:0} s and {mib:0} MiB for the film of full size, from {FullSizeFilm.WidthPx} x {ThinCropRows} px by area."));
        Console.WriteLine(Say($"Everything, ours: {whole[0]} s and {whole[3]} MiB; ratio {seconds / Number(whole[0]):0}, of memory {mib / Number(whole[3]):0}."));
    }

    private static async Task<string[]> QuickerAsync(string what, string film)
    {
        var (one, other) = (await OwnAsync(what, film), await OwnAsync(what, film));
        return Number(one[0]) <= Number(other[0]) ? one : other;
    }

    private static async Task<string[]> OwnAsync(string what, string film) =>
        (await ProgramRun.OfAsync(Environment.ProcessPath!, what, film)).Output.Trim().Split(' ');

    /// <summary>The lines a peer wrote, or nothing where it is not installed.</summary>
    private static async Task<string[]?> PeerAsync(string program, params string[] arguments)
    {
        try
        {
            return (await ProgramRun.OfAsync(program, arguments)).Output.Trim().Split('\n');
        }
        catch (Exception failure) when (failure is InvalidOperationException or Win32Exception)
        {
            return null;
        }
    }

    private static void Tell(string what, string seconds, string cpu, string mib) => Console.WriteLine($"{what,-58}{seconds,8}{cpu,9}{mib,7}");

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
