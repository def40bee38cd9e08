using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Storage;

namespace CalibrationApi.Changes;

/// <summary>The route of the changes.</summary>
internal static class ChangesEndpoints
{
    public static void AddChanges(this IServiceCollection services) => services.AddSingleton<WaitingReaders>();

    public static void MapChanges(this IEndpointRouteBuilder routes) =>
        routes
            .MapGet(
                "/changes",
                (
                    [AsParameters] ChangesQuery query,
                    HttpContext context,
                    CalibrationDatabase database,
                    Workspace workspace,
                    Cursors cursors,
                    WaitingReaders readers
                ) => ListChanges.HandleAsync(query, context, database, workspace, cursors, readers)
            )
            .WithName("listChanges")
            .WithTags("Changes")
            .Needs(Scope.Read)
            .WithSummary("Lists every stored change, in the order in which it was stored.")
            .WithDescription(
                "What was described, changed, recorded or superseded, whenever it happened: what was entered offline on Sunday and arrived on Tuesday stands at its place of Tuesday. Whoever reads on from the after of the last page sees each change once and misses none; wait=20s holds the request until there is one. Keys and workspaces are not listed. What was stored before the service kept this list stands at its beginning, in the order in which it was received, with the creation and the last change of what is described. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header."
            )
            .Produces<ChangePage>(StatusCodes.Status200OK, PageFormats.Json, PageFormats.Csv, PageFormats.Ndjson)
            .WithMetadata(Declared.ListingChanges);
}
