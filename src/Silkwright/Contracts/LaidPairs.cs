using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Emulsions of a document, each capillary film with the emulsion that <c>laidWith</c> names.</summary>
internal static class LaidPairs
{
    public static IReadOnlyList<StencilEmulsion> Of(
        IEnumerable<DocumentField> entries, Func<DocumentField, StencilEmulsion> read, ProblemList problems)
    {
        (DocumentField Field, StencilEmulsion Emulsion)[] all = [.. entries.Select(field => (field, read(field)))];
        return [.. all.Select(entry => entry.Field["laidWith"].Text() is { } id ? Laid(entry.Field["laidWith"], entry.Emulsion, id) : entry.Emulsion)];

        StencilEmulsion Laid(DocumentField field, StencilEmulsion film, string id)
        {
            var laying = all.Select(entry => entry.Emulsion).FirstOrDefault(other => string.Equals(other.Id, id, StringComparison.OrdinalIgnoreCase));
            if (film.Family != EmulsionFamily.CapillaryFilm)
                problems.Add($"{film.Id} is no capillary film, and only a film is laid.", field.Path, "Take laidWith out, or give its family as capillaryFilm.");
            else if (laying is null)
                problems.Add($"The shop has no emulsion called '{id}' to lay {film.Id} with.", field.Path, "List it in emulsions, or take laidWith out: a film is then laid with water.");
            else if (laying.Family == EmulsionFamily.CapillaryFilm)
                problems.Add($"{film.Id} cannot be laid with {laying.Id}, which is a film too.", field.Path, "Name a liquid emulsion.");
            else
                return film with { LaidWith = laying };
            return film;
        }
    }
}
