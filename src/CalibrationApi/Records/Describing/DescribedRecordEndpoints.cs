using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Described;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Records.Describing;

/// <summary>The routes that every kind of described record has.</summary>
internal static class DescribedRecordEndpoints
{
    /// <summary>Maps create, read, list and replace for one kind.</summary>
    /// <param name="routes">The group.</param>
    /// <param name="kind">Kind of record.</param>
    /// <param name="path">Plural of its path, for example <c>machines</c>.</param>
    /// <param name="name">Singular in names of operations, for example <c>Machine</c>.</param>
    /// <param name="what">The thing in a sentence, for example <c>machine with its meters</c>.</param>
    public static void MapDescribedRecords<TRequest, TAnswer>(
        this IEndpointRouteBuilder routes,
        RecordKind kind,
        string path,
        string name,
        string what
    )
        where TRequest : DescribedRequest
        where TAnswer : TRequest, IRecordAnswer
    {
        var records = new DescribedRecords<TRequest>(kind, path, ListTable.Of<TRequest>(RecordBody.Leading));
        var tag = char.ToUpperInvariant(path[0]) + path[1..];
        var group = routes.MapGroup("/" + path).WithTags(tag);
        // Their bodies are of a type that is only known where this is called, so these handlers are wrapped when the program runs.
#pragma warning disable RDG011
        group
            .MapPost("", (JsonBody<TRequest> body, HttpContext context, Workspace workspace) =>
                records.CreateAsync(body, context, workspace)
            )
            .WithName($"create{name}")
            .Needs(Scope.Write)
            .WithSummary($"Creates a {what}.")
            .WithDescription("Send an Idempotency-Key, or your own id, to be able to repeat the request safely.")
            .Produces<TAnswer>(StatusCodes.Status201Created)
            .Produces<TAnswer>(StatusCodes.Status200OK)
            .WithMetadata(Declared.Storing);
        group
            .MapGet(
                "",
                (
                    [AsParameters] RecordQuery query,
                    HttpContext context,
                    CalibrationDatabase database,
                    Workspace workspace,
                    Cursors cursors
                ) => records.List(query, context, database, workspace, cursors)
            )
            .WithName($"list{name}s")
            .Needs(Scope.Read)
            .WithSummary($"Lists every {what}.")
            .WithDescription("In the order of ids, page by page; follow the next link. As JSON, CSV or NDJSON by the Accept header.")
            .Produces<Page<TAnswer>>(StatusCodes.Status200OK, PageFormats.Json, PageFormats.Csv, PageFormats.Ndjson)
            .WithMetadata(Declared.Listing);
        group
            .MapGet("/{id}", (string id, CalibrationDatabase database, Workspace workspace, [FromQuery] string? units = null) =>
                records.Get(id, database, workspace, units)
            )
            .WithName($"get{name}")
            .Needs(Scope.Read)
            .WithSummary($"Reads a {what}.")
            .WithDescription("As entered, with its revision. If-None-Match with the ETag saves the transfer.")
            .Produces<TAnswer>(StatusCodes.Status200OK)
            .WithMetadata(Declared.Reading);
        group
            .MapPut("/{id}", (string id, JsonBody<TRequest> body, HttpContext context, Workspace workspace) =>
                records.ReplaceAsync(id, body, context, workspace)
            )
            .WithName($"replace{name}")
            .Needs(Scope.Write)
            .WithSummary($"Describes a {what} anew, or retires it.")
            .WithDescription(
                "The whole description takes the place of the earlier one, so change what you read and send that: its revision and times may come along unchanged. Send the ETag of your last GET as If-Match."
            )
            .Produces<TAnswer>(StatusCodes.Status200OK)
            .WithMetadata(Declared.Replacing);
#pragma warning restore RDG011
    }
}
