namespace Silkwright.Plans;

/// <summary>What is known of the side from which a film reads right.</summary>
public static class ReadingSide
{
    /// <summary>What a person does at the light table. Common practice, no source.</summary>
    public const string Check =
        "Lay the film with its emulsion side (the duller one, from which a scratch takes the black off) towards you: its letters must read right. Where they read backwards, output it again mirrored; "
        + "films for transfers are meant the other way round.";

    /// <summary>Of one film.</summary>
    public const string Words = "Which side reads right cannot be told from the file: no lettering is read here. " + Check;

    /// <summary>Of the films of one job, which can be held against each other; of a single film where there is but one.</summary>
    public static string Of(FilmsTogether films)
    {
        ArgumentNullException.ThrowIfNull(films);
        var turned = films.MirroredOrDuplicate.Where(pair => pair.Resemblance.Turn is Artwork.FilmTurn.Mirrored or Artwork.FilmTurn.MirroredTopToBottom).ToArray();
        return films.SameSize is null
            ? Words
            : turned.Length == 0
            ? $"No two of these films are told mirror images of each other. {Words}"
            : $"{string.Join("; ", turned.Select(pair => $"{pair.First} and {pair.Second} are mirrored against each other"))}: one of the two is output with the wrong side up, and the file does not say which. {Check}";
    }
}
