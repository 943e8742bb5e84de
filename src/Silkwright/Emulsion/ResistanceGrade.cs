namespace Silkwright.Emulsion;

/// <summary>How an emulsion stands up to an ink.</summary>
public enum ResistanceGrade
{
    /// <summary>The ink attacks it.</summary>
    Poor,

    /// <summary>It works when hardened or for short runs.</summary>
    Fair,

    Good,
}
