using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>What an aim is worth and why it lies where it does, alike in shell and page.</summary>
public static class AimWords
{
    /// <summary>Empty where there is no aim.</summary>
    public static string Of(ExposureWindow window) => window is { AimChancePercent: { } chance, AimBecause: { } because }
        ? $"An exposure at the aim does both in about {Figures.Plain(chance, 0)} of 100 cases, {(window.IsMeasured ? "a day's own scatter counted" : "so little is known before a step test")}. {because}"
        : "";
}
