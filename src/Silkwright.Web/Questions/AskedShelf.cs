namespace Silkwright.Web.Questions;

/// <summary>Which emulsions a question is asked of; an address carries the word.</summary>
public enum AskedShelf
{
    /// <summary>One of each usual kind.</summary>
    Usual,

    /// <summary>This shop's.</summary>
    Own,

    /// <summary>The kept catalogue's.</summary>
    Catalogue,

    /// <summary>This shop's, and the kept catalogue's beside them.</summary>
    OwnAndCatalogue,
}
