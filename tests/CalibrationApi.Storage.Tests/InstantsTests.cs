namespace CalibrationApi.Storage.Tests;

public sealed class InstantsTests
{
    [Fact]
    public void Text_IsUtcToTheMillisecond()
    {
        Assert.Equal("2026-04-18T04:40:00.123Z", Instants.Text(new DateTimeOffset(2026, 4, 18, 6, 40, 0, 123, 456, TimeSpan.FromHours(2))));
    }

    [Fact]
    public void Read_OfAText_GivesTheInstantAndItsOffset()
    {
        var entered = new DateTimeOffset(2026, 4, 18, 6, 40, 0, 123, new TimeSpan(5, 45, 0));

        var read = Instants.Read(Instants.Text(entered), (long)entered.Offset.TotalMinutes);

        Assert.Equal(entered, read);
        Assert.Equal(entered.Offset, read.Offset);
    }

    [Fact]
    public void Text_OrderOfTexts_IsTheOrderOfTime()
    {
        // Offsets and lengths of fractions would disturb it if they stood in the text.
        DateTimeOffset[] ordered =
        [
            new(1990, 1, 1, 0, 0, 0, TimeSpan.Zero),
            new(2026, 4, 18, 23, 59, 59, 999, TimeSpan.FromHours(14)),
            new(2026, 4, 18, 12, 0, 0, TimeSpan.Zero),
            new(2026, 4, 18, 12, 0, 0, 10, TimeSpan.Zero),
            new(2026, 4, 18, 12, 0, 0, 100, TimeSpan.Zero),
            new(2026, 4, 18, 1, 0, 0, TimeSpan.FromHours(-12)),
        ];

        Assert.Equal(ordered.Order().Select(Instants.Text), ordered.Select(Instants.Text).Order(StringComparer.Ordinal));
        Assert.Equal(ordered, ordered.Order());
    }
}
