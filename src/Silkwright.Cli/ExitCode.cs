namespace Silkwright.Cli;

/// <summary>How a command ended.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>A failure of ours.</summary>
    public const int Failed = 1;

    /// <summary>Bad input; nothing was written.</summary>
    public const int BadInput = 2;

    /// <summary>Stopped by the person: 128 and the number of the interrupt signal, as shells have it.</summary>
    public const int Stopped = 130;
}
