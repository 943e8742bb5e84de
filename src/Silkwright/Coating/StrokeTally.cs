namespace Silkwright.Coating;

/// <summary>What an ordered list of strokes leaves, counted in films of one stroke.</summary>
/// <param name="PrintFilms">Wet films standing on the print side of the first, wet-on-wet coat.</param>
/// <param name="SqueegeeFilms">Wet film left on the squeegee side of it: 0 to 1, each stroke there levels the one before.</param>
/// <param name="FaceFilms">Films laid on the print side over a dried coat.</param>
/// <param name="BackFilms">Films laid on the squeegee side over a dried coat: they fill its hollow and add no height.</param>
internal sealed record StrokeTally(double PrintFilms, double SqueegeeFilms, double FaceFilms, double BackFilms)
{
    /// <summary>Walks the strokes in their order: docs/engines/coating.md, equation 3.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No stroke, or the first is a scrape or a stroke over a dried coat.</exception>
    public static StrokeTally Of(IReadOnlyList<Stroke> strokes)
    {
        if (strokes.Count == 0)
            throw new ArgumentOutOfRangeException(nameof(strokes), "At least one stroke is needed.");
        if (strokes[0].Scrape || strokes[0].AfterDrying)
            throw new ArgumentOutOfRangeException(nameof(strokes), "The first stroke lays emulsion on bare mesh; it cannot scrape or follow a drying.");

        double print = 0, squeegee = 0, face = 0, back = 0, wetFace = 0, wetBack = 0;
        var printSideWetted = false;
        var dried = false;
        foreach (var stroke in strokes)
        {
            if (stroke.AfterDrying)
            {
                (face, wetFace) = (face + wetFace, 0);
                (back, wetBack) = (back + wetBack, 0);
                dried = true;
            }

            switch (dried, stroke.Side, stroke.Scrape)
            {
                case (false, StrokeSide.Print, false):
                    print += 1;
                    printSideWetted = true;
                    break;
                case (false, StrokeSide.Squeegee, false):
                    print += printSideWetted ? 1 : CoatDefaults.PushedThroughBareMesh;
                    squeegee = 1;
                    break;
                case (false, StrokeSide.Print, true):
                    print *= CoatDefaults.LeftByScrape;
                    break;
                case (false, StrokeSide.Squeegee, true):
                    squeegee *= CoatDefaults.LeftByScrape;
                    break;
                case (true, StrokeSide.Print, false):
                    wetFace += 1;
                    break;
                case (true, StrokeSide.Squeegee, false):
                    wetBack += 1;
                    break;
                case (true, StrokeSide.Print, true):
                    wetFace *= CoatDefaults.LeftByScrape;
                    break;
                case (true, StrokeSide.Squeegee, true):
                    wetBack *= CoatDefaults.LeftByScrape;
                    break;
                default:
                    throw new ArgumentOutOfRangeException(nameof(strokes), stroke.Side, "No such side.");
            }
        }

        return new StrokeTally(print, squeegee, face + wetFace, back + wetBack);
    }
}
