namespace Silkwright.Artwork;

/// <summary>What tells that two films are doubled or mirrored.</summary>
public enum ResemblanceGround
{
    /// <summary>Both hold the same image.</summary>
    SameImage,

    /// <summary>Register marks that are not placed evenly agree only so.</summary>
    Marks,

    /// <summary>One image lies on the other only so, as a colour lies on its underbase.</summary>
    Cover,
}
