using System.Globalization;
using Silkwright.Bench;

switch (args)
{
    case ["plan", var executable, var demo]:
        await PlanBench.RunAsync(executable, demo);
        return 0;
    case ["film", var executable, var demo]:
        await FilmBench.RunAsync(executable, demo);
        return 0;
    case ["film-draw", var art, var folder, var height] when Enum.TryParse<FullSizeArt>(art, ignoreCase: true, out var on):
        Console.WriteLine(FullSizeFilm.Drawn(folder, int.Parse(height, CultureInfo.InvariantCulture), on));
        return 0;
    case ["film-count", var film]:
        FilmStages.Count(film);
        return 0;
    case ["film-measure", var film]:
        FilmStages.Measure(film);
        return 0;
    case ["film-tiles", var film]:
        TilesBench.Look(film);
        return 0;
    case ["film-heat", var film]:
        TilesBench.Heat(film);
        return 0;
    case ["film-warm", var small, var film]:
        FilmStages.Warm(small, film);
        return 0;
    case ["film-stages", var small, var film]:
        FilmStages.Stages(small, film);
        return 0;
    case ["film-open", var film, .. var diameters]:
        FilmStages.Open(film, diameters);
        return 0;
    case ["light", _, _]:
        LightBench.Run();
        return 0;
    case ["coat", _, _]:
        await CoatBench.RunAsync();
        return 0;
    case ["coat-fit", var readings]:
        CoatBench.Fit(readings);
        return 0;
    case ["coat-large"]:
        CoatBench.Large();
        return 0;
    case ["coat-learn"]:
        CoatLearning.Run();
        return 0;
    case ["fuzz", var cases, var first]:
        return FuzzBench.Run(cases, first) ? 0 : 1;
    case ["web", var executable, var demo]:
        await WebBench.RunAsync(executable, demo);
        return 0;
    case ["shelf", _, _]:
        await ShelfBench.RunAsync();
        return 0;
    case ["shelf-choice", var kind, var emulsions, var jobs]:
        ShelfBench.Choose(kind, emulsions, jobs, "1");
        return 0;
    case ["shelf-choice", var kind, var emulsions, var jobs, var times]:
        ShelfBench.Choose(kind, emulsions, jobs, times);
        return 0;
    case ["shelf-plain", var kind, var emulsions, var jobs]:
        ShelfBench.Plain(kind, emulsions, jobs);
        return 0;
    default:
        await Console.Error.WriteLineAsync("usage: plan|film|web|shelf|light|coat EXECUTABLE DEMO-FOLDER (the script bench at the top of the project fills these in)");
        return 2;
}
