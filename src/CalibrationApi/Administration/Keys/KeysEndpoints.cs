using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Storage;

namespace CalibrationApi.Administration.Keys;

/// <summary>Routes of keys.</summary>
internal static class KeysEndpoints
{
    private const string Tag = "Keys";

    public static void MapKeys(this IEndpointRouteBuilder routes)
    {
        var keys = routes.MapGroup("/keys").WithTags(Tag).Needs(Scope.Admin);
        keys.MapPost("", CreateKey.HandleAsync)
            .WithName("createKey")
            .Produces<NewKeyAnswer>(StatusCodes.Status201Created)
            .Produces<KeyAnswer>()
            .WithMetadata(Declared.Storing);
        keys.MapGet(
                "",
                (
                    [AsParameters] PageQuery query,
                    HttpContext context,
                    CalibrationDatabase database,
                    Workspace workspace,
                    Cursors cursors,
                    TimeProvider clock
                ) => ReadKeys.List(query, context, database, workspace, cursors, clock)
            )
            .WithName("listKeys")
            .WithSummary("Lists the keys of the workspace.")
            .WithDescription(
                "Those that have ended too, in the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header."
            )
            .Produces<Page<KeyAnswer>>(StatusCodes.Status200OK, PageFormats.Json, PageFormats.Csv, PageFormats.Ndjson)
            .WithMetadata(Declared.Listing);
        keys.MapGet("/{id}", ReadKeys.Get).WithName("getKey").Produces<KeyAnswer>().WithMetadata(Declared.Reading);
        keys.MapPost("/{id}/rotations", EndKey.RotateAsync)
            .WithName("rotateKey")
            .Produces<NewKeyAnswer>(StatusCodes.Status201Created)
            .Produces<KeyAnswer>()
            .WithMetadata(Declared.StoringBelow);
        keys.MapPost("/{id}/revocations", EndKey.RevokeAsync)
            .WithName("revokeKey")
            .Produces<KeyAnswer>()
            .WithMetadata(Declared.StoringBelow);
        routes
            .MapPost("/workspaces/{id}/keys", CreateKey.HandleForWorkspaceAsync)
            .WithName("createKeyOfWorkspace")
            .WithTags("Workspaces")
            .Needs(Scope.Operator)
            .Produces<NewKeyAnswer>(StatusCodes.Status201Created)
            .Produces<KeyAnswer>()
            .WithMetadata(Declared.StoringBelow);
    }
}
