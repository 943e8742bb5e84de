namespace Silkwright.Web.Pages.Jobs.Sheet;

/// <summary>The stations of the making line, in the order a screen is made.</summary>
public enum Station
{
    Film,
    Mesh,
    Coat,
    Dry,
    Expose,
    Print,
}
