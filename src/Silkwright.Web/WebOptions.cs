using Silkwright.Records.Store;

namespace Silkwright.Web;

/// <summary>How the web program is started.</summary>
public sealed record WebOptions
{
    /// <summary>Addresses to listen at, separated by semicolons. Port 0 takes a free one.</summary>
    public string Urls { get; init; } = "http://127.0.0.1:5080";

    /// <summary>The folder that holds the shop's records.</summary>
    public required string DataFolder { get; init; }

    /// <summary>Puts a first shop into an empty store, such as the demonstration; none: a shop that nobody has described yet.</summary>
    public Func<SilkwrightStore, CancellationToken, Task>? FillEmptyStore { get; init; }

    public TimeProvider Time { get; init; } = TimeProvider.System;
}
