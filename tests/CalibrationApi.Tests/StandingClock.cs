namespace CalibrationApi.Tests;

/// <summary>A clock that stands until a test moves it.</summary>
internal sealed class StandingClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 5, 4, 10, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
