namespace Silkwright.Contracts;

/// <summary>A row that reads oddly: told, never dropped in silence.</summary>
/// <param name="Line">Where it stands, from 1.</param>
/// <param name="Column">Its column.</param>
/// <param name="What">What is odd.</param>
/// <param name="Remedy">What to do.</param>
/// <param name="Used">Whether it was learnt from all the same.</param>
public sealed record CoatFlag(int Line, string Column, string What, string Remedy, bool Used);
