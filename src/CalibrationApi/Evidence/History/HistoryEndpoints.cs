using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Storage;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.History;

/// <summary>Routes of the history and of the lists that are parts of it.</summary>
internal static class HistoryEndpoints
{
    public static void MapHistory(this IEndpointRouteBuilder routes)
    {
        Map(routes, "/history", null, "listHistory", "History", "Lists everything that happened.");
        Map(routes, "/catch-tests", EvidenceKind.CatchTest, "listCatchTests", "Catch tests", "Lists catch tests.");
        Map(routes, "/adoptions", EvidenceKind.Adoption, "listAdoptions", "Values in force", "Lists adoptions.");
        Map(routes, "/scale-checks", EvidenceKind.ScaleCheck, "listScaleChecks", "Scale checks", "Lists checks of scales.");
    }

    private static void Map(IEndpointRouteBuilder routes, string path, string? kind, string name, string tag, string summary)
    {
        var list = new ListHistory(kind);
        routes
            .MapGet(
                path,
                (
                    [AsParameters] HistoryQuery query,
                    HttpContext context,
                    CalibrationDatabase database,
                    Workspace workspace,
                    Cursors cursors
                ) => list.Handle(query, context, database, workspace, cursors)
            )
            .WithName(name)
            .WithTags(tag)
            .Needs(Scope.Read)
            .WithSummary(summary)
            .WithDescription(
                "By the time when it happened, page by page; follow the next link, which stays true while others add records. Superseded records stay in the list and say what took their place. As JSON, CSV or NDJSON by the Accept header."
            )
            .Produces<Page<HistoryItem>>(StatusCodes.Status200OK, PageFormats.Json, PageFormats.Csv, PageFormats.Ndjson)
            .WithMetadata(Declared.Listing);
    }
}
