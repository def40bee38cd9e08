namespace CalibrationApi.Tests;

/// <summary>A clock that stands until a test moves it on.</summary>
internal sealed class SteppingClock : TimeProvider
{
    private TimeSpan passed = TimeSpan.Zero;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override long GetTimestamp() => passed.Ticks;

    public override DateTimeOffset GetUtcNow() => new DateTimeOffset(2026, 5, 4, 10, 0, 0, TimeSpan.Zero) + passed;

    public void Advance(double seconds) => passed += TimeSpan.FromSeconds(seconds);
}
