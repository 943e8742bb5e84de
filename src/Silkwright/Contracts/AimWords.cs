using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>What an aim is worth and why it lies where it does, or how sure it is that there is none; alike in shell and page.</summary>
public static class AimWords
{
    public static string Of(ExposureWindow window) => window is { AimChancePercent: { } chance, AimBecause: { } because }
        ? $"An exposure at the aim does both in about {Figures.Plain(chance, 0)} of 100 cases, {(window.IsMeasured ? "a day's own scatter counted" : "so little is known before a step test")}. {because}"
        : $"So says the likeliest of what is known; in {(window.OpenChancePercent < 1 ? "fewer than 1" : $"about {Figures.Plain(window.OpenChancePercent, 0)}")} of 100 cases some exposure does both after all.";
}
