
namespace Silkwright.Web.Api;

/// <summary>The documents of the shell over HTTP. Bad input is answered by <see cref="Faults"/> as problem details.</summary>
internal static class ApiEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        var api = routes.MapGroup("/api");
        QuestionEndpoints.Map(api);
        PlanEndpoints.Map(api);
        CoatEndpoints.Map(api);
        ExposureEndpoints.Map(api);
        FilmEndpoints.Map(api);
        FilmWidthEndpoint.Map(api);
        ShelfEndpoints.Map(api);
        CatalogueEndpoints.Map(api);
        JobEndpoints.Map(api);
        ScreenEndpoints.Map(api);
        GaugeEndpoints.Map(api);
    }
}
