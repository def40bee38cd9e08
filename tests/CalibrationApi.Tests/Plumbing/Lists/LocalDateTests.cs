using System.Globalization;
using CalibrationApi.Plumbing.Lists;

namespace CalibrationApi.Tests.Plumbing.Lists;

/// <summary>
/// Days as they are on the farm. Source of the expected dates: the IANA time zone database as Python's zoneinfo module reads it.
/// </summary>
public sealed class LocalDateTests
{
    [Theory]
    // The days on which clocks change have 23 and 25 hours.
    [InlineData("Europe/Vienna", "2026-03-28T22:59:59Z", "2026-03-28")]
    [InlineData("Europe/Vienna", "2026-03-28T23:30:00Z", "2026-03-29")]
    [InlineData("Europe/Vienna", "2026-03-29T21:59:59Z", "2026-03-29")]
    [InlineData("Europe/Vienna", "2026-03-29T22:00:00Z", "2026-03-30")]
    [InlineData("Europe/Vienna", "2026-10-24T22:00:00Z", "2026-10-25")]
    [InlineData("Europe/Vienna", "2026-10-25T22:59:59Z", "2026-10-25")]
    [InlineData("Europe/Vienna", "2026-10-25T23:00:00Z", "2026-10-26")]
    [InlineData("America/Regina", "2026-07-01T05:59:59Z", "2026-06-30")]
    [InlineData("America/Regina", "2026-07-01T06:00:00Z", "2026-07-01")]
    [InlineData("America/St_Johns", "2026-07-01T02:29:59Z", "2026-06-30")]
    [InlineData("America/St_Johns", "2026-07-01T02:30:00Z", "2026-07-01")]
    [InlineData("Australia/Sydney", "2026-10-04T13:00:00Z", "2026-10-05")]
    [InlineData("Asia/Kathmandu", "2026-01-01T18:14:59Z", "2026-01-01")]
    [InlineData("Asia/Kathmandu", "2026-01-01T18:15:00Z", "2026-01-02")]
    [InlineData("Pacific/Kiritimati", "2026-01-01T10:00:00Z", "2026-01-02")]
    [InlineData("Etc/UTC", "2026-01-01T23:59:59Z", "2026-01-01")]
    public void Of_Instant_IsTheDayOfTheZone(string zone, string instant, string date) =>
        Assert.Equal(date, LocalDate.Of(DateTimeOffset.Parse(instant, CultureInfo.InvariantCulture), zone));

    // What counts is the instant: the offset it was entered with does not move the day of the machine.
    [Fact]
    public void Of_SameInstantWithAnotherOffset_IsTheSameDay()
    {
        var instant = new DateTimeOffset(2026, 4, 18, 23, 30, 0, TimeSpan.Zero);

        Assert.Equal("2026-04-19", LocalDate.Of(instant, "Europe/Vienna"));
        Assert.Equal("2026-04-19", LocalDate.Of(instant.ToOffset(TimeSpan.FromHours(-10)), "Europe/Vienna"));
    }
}
