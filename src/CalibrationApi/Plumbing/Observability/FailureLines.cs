using CalibrationApi.Plumbing.Settings;

namespace CalibrationApi.Plumbing.Observability;

/// <summary>Which failures of ours are told in the log: whoever found out how to make one would fill it.</summary>
/// <remarks>Counted apart from refused requests, so that nobody hides a failure behind those.</remarks>
internal sealed partial class FailureLines(CalibrationSettings settings, TimeProvider clock, ILogger<FailureLines> log)
{
    private readonly LineBudget lines = new(settings.RefusedRequestsLoggedPerMinute, clock);

    /// <summary>Whether another failure is told.</summary>
    public bool Take()
    {
        var (isToBeTold, untoldBefore) = lines.Take();
        if (untoldBefore > 0)
            NotTold(log, untoldBefore);
        return isToBeTold;
    }

    /// <summary>Whether the failure of a request is told: its exception and its line, or neither.</summary>
    public bool Tells(HttpContext context)
    {
        if (context.Features.Get<Decision>() is not { } decision)
            context.Features.Set(decision = new Decision(Take()));
        return decision.IsToBeTold;
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "{Count} more requests failed before this one and got no line of their own.")]
    private static partial void NotTold(ILogger log, int count);

    private sealed record Decision(bool IsToBeTold);
}
