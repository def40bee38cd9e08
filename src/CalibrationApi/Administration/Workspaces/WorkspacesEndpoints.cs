using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Storage;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Administration.Workspaces;

/// <summary>Routes of workspaces.</summary>
internal static class WorkspacesEndpoints
{
    public static void MapWorkspaces(this IEndpointRouteBuilder routes)
    {
        var workspaces = routes.MapGroup("/workspaces").WithTags("Workspaces").Needs(Scope.Operator);
        workspaces
            .MapPost("", KeepWorkspace.CreateAsync)
            .WithName("createWorkspace")
            .Produces<WorkspaceAnswer>(StatusCodes.Status201Created)
            .Produces<WorkspaceAnswer>()
            .WithMetadata(Declared.Storing);
        workspaces
            .MapGet("", ([AsParameters] WorkspaceQuery query, HttpContext context, CalibrationDatabase database, Cursors cursors) =>
                KeepWorkspace.List(query, context, database, cursors)
            )
            .WithName("listWorkspaces")
            .WithSummary("Lists the workspaces of the installation.")
            .WithDescription("In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.")
            .Produces<Page<WorkspaceAnswer>>(StatusCodes.Status200OK, PageFormats.Json, PageFormats.Csv, PageFormats.Ndjson)
            .WithMetadata(Declared.Listing);
        workspaces.MapGet("/{id}", KeepWorkspace.Get).WithName("getWorkspace").Produces<WorkspaceAnswer>().WithMetadata(Declared.Reading);
        workspaces
            .MapPut("/{id}", KeepWorkspace.ReplaceAsync)
            .WithName("replaceWorkspace")
            .Produces<WorkspaceAnswer>()
            .WithMetadata(Declared.Replacing);
    }
}

/// <summary>Which workspaces are wanted.</summary>
internal sealed class WorkspaceQuery : PageQuery
{
    /// <summary>Retired ones too: true or false. Default false.</summary>
    [FromQuery(Name = "includeRetired")]
    public string? IncludeRetired { get; init; }

    /// <summary>
    /// Items on a page, 1 to 1000, or all for a stream of CSV or NDJSON without pages. Default 100, for CSV all.
    /// </summary>
    [FromQuery(Name = "limit")]
    public override string? Limit { get; init; }

    /// <summary>
    /// What separates the cells of CSV: comma (the default), or semicolon, which comes with decimal commas.
    /// </summary>
    [FromQuery(Name = "separator")]
    public override string? Separator { get; init; }

    /// <summary>Whether CSV begins with a byte-order mark, by which some spreadsheets tell UTF-8: yes or no (the default).</summary>
    [FromQuery(Name = "bom")]
    public override string? Bom { get; init; }

    /// <summary>Where to go on: the cursor of the previous page's next link.</summary>
    [FromQuery(Name = "cursor")]
    public override string? Cursor { get; init; }
}
