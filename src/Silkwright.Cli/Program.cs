using Silkwright.Cli;

return await Shell.RunAsync(args, Surroundings.OfThisProcess());
