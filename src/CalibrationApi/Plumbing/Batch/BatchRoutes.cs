using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Operations;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>Routes that answer many questions at once.</summary>
internal static class BatchRoutes
{
    /// <summary>The last part of the path of every batch.</summary>
    public const string Suffix = "/batch";

    /// <summary>What can be sent where questions also come as tables.</summary>
    public static readonly string[] TakenWithTables = [PageFormats.Ndjson, PageFormats.Csv, PageFormats.Tsv];

    /// <summary>Maps the batch of a calculation beside it: <c>{path}/batch</c>.</summary>
    /// <param name="routes">The group of the calculation.</param>
    /// <param name="path">Path of the calculation.</param>
    /// <param name="calculation">What answers one question, whether it is sent alone or among many.</param>
    /// <param name="table">How questions are read from a table, where they can be.</param>
    public static RouteHandlerBuilder MapBatch<TRequest, TAnswer>(
        this IEndpointRouteBuilder routes,
        string path,
        Func<TRequest, string?, Results<JsonAnswer<TAnswer>, ProblemResult>> calculation,
        QuestionTable? table = null
    )
        where TRequest : class
        where TAnswer : class
    {
        BatchEndpoint endpoint = new BatchEndpoint<TRequest, TAnswer>(calculation, table);
        return routes
            .MapPost(path + Suffix, endpoint.HandleAsync)
            // Lines are limited one by one; the body may be as long as it takes.
            .WithMetadata(new DisableRequestSizeLimitAttribute())
            .WithMetadata(new PostedMedia(table is null ? PageFormats.Ndjson : string.Join(", ", TakenWithTables)))
            .WithMetadata(table is null ? Declared.Batch : [.. Declared.BatchOfTables, table])
            .Produces<BatchLine<TAnswer>>(StatusCodes.Status200OK, PageFormats.Ndjson, table is null ? [] : [PageFormats.Csv]);
    }
}
