namespace Silkwright.Artwork;

/// <summary>How far one film's register marks lie from another's, counted from the films' top left corners.</summary>
/// <param name="XMm">To the right, in the middle of the marks. [mm]</param>
/// <param name="YMm">Down, in the middle of the marks. [mm]</param>
/// <param name="TurnDegrees">Counter-clockwise; 0 with one mark. [degrees]</param>
/// <param name="StretchPercent">How much larger the film is between its marks; 0 with one mark. [%]</param>
/// <param name="Marks">Marks found on both films.</param>
/// <param name="MostMm">Farthest that one mark lies from its fellow. [mm]</param>
public sealed record RegisterOffset(double XMm, double YMm, double TurnDegrees, double StretchPercent, int Marks, double MostMm);
