namespace Silkwright.Exposure;

/// <summary>How the image comes between lamp and coat.</summary>
public enum Imaging
{
    /// <summary>A film drawn down by vacuum.</summary>
    Film,

    /// <summary>A mask printed straight onto the coat: no film under the light, no gap.</summary>
    PrintedMask,

    /// <summary>Light written onto the coat spot by spot, without film and vacuum.</summary>
    Direct,

    /// <summary>The image thrown onto the coat through a lens: no contact.</summary>
    Projection,
}
