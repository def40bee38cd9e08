namespace CalibrationApi.Clients.Tests;

/// <summary>A clock on which every wait is over at once. It remembers how long they should have been.</summary>
internal sealed class ImpatientClock : TimeProvider
{
    private readonly List<TimeSpan> waits = [];

    public IReadOnlyList<TimeSpan> Waits => waits;

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        waits.Add(dueTime);
        return base.CreateTimer(callback, state, TimeSpan.Zero, period);
    }
}
