namespace Silkwright.Gauging;

/// <summary>How a study's spread was taken apart.</summary>
public enum StudyMethod
{
    /// <summary>Crossed analysis of variance: everybody read every part equally often.</summary>
    Anova,

    /// <summary>Restricted maximum likelihood: readings are missing or unequal in number.</summary>
    Reml,
}
