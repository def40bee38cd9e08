using System.Collections.Concurrent;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Administration.Audit;

/// <summary>Notes in the audit which key took which list away as a file, before the first byte goes out.</summary>
/// <remarks>
/// The first export of a list by a key in an hour is noted, so that a program that fetches a list every minute does not fill the disk.
/// </remarks>
internal sealed class ExportNotes(SingleWriter writer, TimeProvider clock)
{
    private readonly ConcurrentDictionary<(string Workspace, string Key, string Path), DateTimeOffset> noted = [];

    /// <param name="context">The request.</param>
    /// <param name="page">What goes out; given up when it cannot be noted.</param>
    public async Task NoteAsync(HttpContext context, PageResult page)
    {
        var (caller, now) = (Caller.Of(context), clock.GetUtcNow());
        var entry = AuditLine.Of(context, caller, context.Request.Path, now);
        var what = ((string)caller.Workspace, caller.Key ?? "", entry.Target!);
        if (noted.TryGetValue(what, out var before) && now - before < TimeSpan.FromHours(1))
            return;
        try
        {
            await writer.WriteAsync(
                connection =>
                {
                    AuditStore.Append(connection, caller.Workspace, entry);
                    return true;
                },
                timeIsUp: context.RequestAborted
            );
        }
        catch
        {
            page.Dispose();
            throw;
        }

        noted[what] = now;
    }
}

/// <summary>Has the exports of a group of routes noted.</summary>
internal static class ExportNotesRoutes
{
    /// <summary>Every list of the group that goes out as CSV or NDJSON is noted. Without a key there is nobody to name.</summary>
    public static TBuilder WithExportsNoted<TBuilder>(this TBuilder group)
        where TBuilder : IEndpointConventionBuilder =>
        group.AddEndpointFilterFactory(
            (route, next) =>
            {
                if (!Array.Exists(route.MethodInfo.GetParameters(), parameter => parameter.ParameterType.IsAssignableTo(typeof(PageQuery))))
                    return next;
                return async context =>
                {
                    var result = await next(context);
                    if (result is PageResult { IsExport: true } page && Caller.Of(context.HttpContext).Key is not null)
                        await context.HttpContext.RequestServices.GetRequiredService<ExportNotes>().NoteAsync(context.HttpContext, page);
                    return result;
                };
            }
        );
}
