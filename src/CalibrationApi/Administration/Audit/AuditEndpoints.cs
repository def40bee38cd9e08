using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Audit;

namespace CalibrationApi.Administration.Audit;

/// <summary>Routes of the audit.</summary>
internal static class AuditEndpoints
{
    private const string Tag = "Audit";
    private const string ByDay =
        "By day, page by page; follow the next link. Counted and not listed one by one, so that nobody fills the disk by being turned away; kept for 400 days.";

    public static void AddAudit(this IServiceCollection services) => services.AddSingleton<ExportNotes>();

    public static void MapAudit(this IEndpointRouteBuilder routes)
    {
        routes
            .MapGet(
                "/audit",
                (
                    [AsParameters] AuditQuery query,
                    HttpContext context,
                    CalibrationDatabase database,
                    Workspace workspace,
                    Cursors cursors
                ) => ListAudit.Deeds(query, context, database, workspace, cursors)
            )
            .WithName("listAudit")
            .WithTags(Tag)
            .Needs(Scope.Admin)
            .WithSummary("Lists what was done in the workspace, and with which key.")
            .WithDescription(
                "Whatever was stored or changed, and the first export of a list by a key in an hour; other reading is not listed. Entries are only ever added. Page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header."
            )
            .Produces<Page<AuditItem>>(StatusCodes.Status200OK, PageFormats.Json, PageFormats.Csv, PageFormats.Ndjson)
            .WithMetadata(Declared.Listing);
        routes
            .MapGet(
                "/audit/refusals",
                (
                    [AsParameters] PageQuery query,
                    HttpContext context,
                    CalibrationDatabase database,
                    Workspace workspace,
                    Cursors cursors,
                    RefusalCounts counts
                ) => ListAudit.RefusalsAsync(query, context, database, workspace, cursors, counts)
            )
            .WithName("listRefusals")
            .WithTags(Tag)
            .Needs(Scope.Admin)
            .WithSummary("Counts the requests with keys of the workspace that were turned away.")
            .WithDescription(ByDay)
            .Produces<Page<RefusalItem>>(StatusCodes.Status200OK, PageFormats.Json, PageFormats.Csv, PageFormats.Ndjson)
            .WithMetadata(Declared.Listing);
        routes
            .MapGet(
                "/audit/refusals/without-key",
                (
                    [AsParameters] PageQuery query,
                    HttpContext context,
                    CalibrationDatabase database,
                    Cursors cursors,
                    RefusalCounts counts
                ) => ListAudit.RefusalsAsync(query, context, database, RefusalStore.NoWorkspace, cursors, counts)
            )
            .WithName("listRefusalsWithoutKey")
            .WithTags(Tag)
            .Needs(Scope.Operator)
            .WithSummary("Counts the requests without a known key that were turned away.")
            .WithDescription("Of the whole installation, because such a request belongs to no workspace. " + ByDay)
            .Produces<Page<RefusalItem>>(StatusCodes.Status200OK, PageFormats.Json, PageFormats.Csv, PageFormats.Ndjson)
            .WithMetadata(Declared.Listing);
    }
}
