using System.Diagnostics;
using CalibrationApi.Storage.Audit;

namespace CalibrationApi.Plumbing.Access;

/// <summary>What the audit says of a request.</summary>
internal static class AuditLine
{
    public static AuditEntry Of(HttpContext context, Caller caller, string? target, DateTimeOffset at) =>
        new()
        {
            At = at,
            Actor = caller.Key is null ? AuditEntry.ByLocal : AuditEntry.ByKey,
            Key = caller.Key,
            Action = context.GetEndpoint()!.Metadata.GetRequiredMetadata<IEndpointNameMetadata>().EndpointName,
            Target = target,
            Trace = Activity.Current?.TraceId.ToString() ?? context.TraceIdentifier,
        };
}
