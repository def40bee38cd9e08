using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Plumbing.Settings;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>How many batches are answered at the same time: of all callers together, and of one.</summary>
internal sealed class BatchLimit(CalibrationSettings settings)
{
    private readonly PlacesAtOnce places = new(
        RateLimitFields.Batches,
        "batches",
        settings.Limits.BatchesAtOnce,
        settings.Limits.BatchesAtOncePerCaller
    );

    public async Task LimitAsync(HttpContext context, RequestDelegate next)
    {
        if (context.GetEndpoint()?.Metadata.GetMetadata<MuchWork>() is null)
        {
            await next(context);
            return;
        }

        using var place = places.Take(context, out var refusal);
        await (place is null ? refusal!.ExecuteAsync(context) : next(context));
    }
}
