using Silkwright.Bench;

if (args is not ["plan" or "film" or "web", var executable, var demo])
{
    await Console.Error.WriteLineAsync("usage: plan|film|web EXECUTABLE DEMO-FOLDER (the script bench at the top of the project fills these in)");
    return 2;
}

switch (args[0])
{
    case "plan":
        await PlanBench.RunAsync(executable, demo);
        break;
    case "film":
        await FilmBench.RunAsync(executable, demo);
        break;
    default:
        await WebBench.RunAsync(executable, demo);
        break;
}

return 0;
