using System.Text.Json.Nodes;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Plans;
using Silkwright.Web.Jobs;

namespace Silkwright.Web.Api;

/// <summary>Exposures asked with a body: a case with its strips, a table of doses; and the history of the shop kept here. Nothing is kept.</summary>
internal static class ExposureEndpoints
{
    public static void Map(IEndpointRouteBuilder api)
    {
        Post(api, "/expose/window", "The window of an exposure case", "Body: an exposure case, docs/schema/expose-case.json.",
            body => Case(body) is var exposure ? WindowDocument.Of((exposure, ExposureModel.Window(exposure))) : []);
        Post(api, "/expose/test", "A step test, read", "Body: an exposure case with its tests, docs/schema/expose-case.json.",
            body => StepTestDocument.Of(StepTestQuestion.Answer(Case(body), [])));
        Post(api, "/expose/fit", "A working curve from doses and cured depths", "Body: {\"table\": a text with the columns doseMjPerCm2 and curedDepthUm}.",
            body => FitDocument.Of(FitDocument.Read(Table(body), "table")));
        api.MapGet("/expose/drift", async (JobDesk desk, CancellationToken cancel) =>
                Documents.Ok(DriftDocument.Of([.. ShopStepTests.Of(await desk.ShopAsync(null, cancel), desk.Today).Select(exposure => (exposure, StepTestHistory.Of(exposure)))])))
            .WithSummary("The step tests of the shop kept here, day by day: has its exposure drifted?")
            .Produces<JsonObject>();
    }

    private static string Table(JsonObject body)
    {
        Documents.TakeOnly(body, BodyField.Text("table"));
        return Documents.Text(body, "table") ?? throw new InputProblemException(new Problem("There is no table.", "table", "Send the table's text as one JSON string."));
    }

    private static ExposureCase Case(JsonObject body) => ExposureCaseReader.Read(body.ToJsonString(), "body");

    private static void Post(IEndpointRouteBuilder api, string path, string summary, string description, Func<JsonObject, JsonObject> answer) => api
        .MapPost(path, async (HttpRequest request, CancellationToken cancel) => Documents.Ok(answer(await Documents.ReadAsync(request, cancel))))
        .Accepts<JsonObject>("application/json")
        .WithSummary(summary)
        .WithDescription(description)
        .Produces<JsonObject>()
        .ProducesProblem(StatusCodes.Status400BadRequest)
        .DisableAntiforgery();
}
