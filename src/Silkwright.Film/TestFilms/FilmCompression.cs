namespace Silkwright.Film.TestFilms;

/// <summary>How a TIFF film's strips are packed; values are TIFF 6.0 compression numbers.</summary>
public enum FilmCompression
{
    /// <summary>Not packed.</summary>
    None = 1,

    /// <summary>CCITT group 4 (ITU-T T.6), the usual one for films.</summary>
    CcittG4 = 4,

    /// <summary>Lempel-Ziv-Welch.</summary>
    Lzw = 5,

    /// <summary>Runs of bytes.</summary>
    PackBits = 32773,
}
