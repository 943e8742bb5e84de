namespace Silkwright.Records.Screens;

/// <summary>How long a screen may lie between two steps. All common practice, no source, unless said.</summary>
public static class WaitLimits
{
    /// <summary>Degreased mesh gathers dust and grease again; coat within the day.</summary>
    public static readonly TimeSpan DegreasedToCoated = TimeSpan.FromHours(24);

    /// <summary>A wet coat that lies about sags and gathers dust.</summary>
    public static readonly TimeSpan CoatedToDryIn = TimeSpan.FromMinutes(30);

    /// <summary>Drying takes 2 to 24 h; longer means that it was forgotten, or that the room is too damp.</summary>
    public static readonly TimeSpan DryInToDryOut = TimeSpan.FromHours(24);

    /// <summary>The short end for diazo and dual-cure, 2 to 4 weeks; photopolymer keeps longer. The coat takes up water again meanwhile.</summary>
    public static readonly TimeSpan DryOutToExposed = TimeSpan.FromDays(14);
}
