using System.Globalization;
using CalibrationApi.Plumbing.Members;

namespace CalibrationApi.Tests.Plumbing.Members;

/// <summary>Instants as senders state them: RFC 3339 with offset, not from the future.</summary>
public sealed class EnteredInstantTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("2026-04-18T06:40:00+02:00", "2026-04-18T04:40:00Z")]
    [InlineData("2026-04-18T06:40:00Z", "2026-04-18T06:40:00Z")]
    [InlineData("2026-04-18T06:40:00.5-06:00", "2026-04-18T12:40:00.5Z")]
    [InlineData("2026-04-18T06:40:00.123456Z", "2026-04-18T06:40:00.123456Z")]
    [InlineData("2026-04-18T06:40:00+05:45", "2026-04-18T00:55:00Z")]
    [InlineData("2026-04-18T06:40:00-00:00", "2026-04-18T06:40:00Z")]
    public void TryRead_Rfc3339_IsTheInstant(string text, string utc)
    {
        Assert.True(EnteredInstant.TryRead(text, out var instant));
        Assert.Equal(DateTimeOffset.Parse(utc, CultureInfo.InvariantCulture), instant);
    }

    [Theory]
    [InlineData("")]
    [InlineData("2026-04-18")]
    [InlineData("2026-04-18T06:40:00")]
    [InlineData("2026-04-18 06:40:00Z")]
    [InlineData("18.04.2026 06:40")]
    [InlineData("2026-04-18T06:40Z")]
    [InlineData("2026-04-18T25:00:00Z")]
    [InlineData("2026-02-30T06:40:00Z")]
    [InlineData("2026-04-18T06:40:00+02")]
    [InlineData("2026-04-18T06:40:00+0200")]
    [InlineData("2026-04-18T06:40:00+2:00")]
    [InlineData("2026-04-18T06:40:00+99:00")]
    [InlineData("2026-04-18T06:40:00 +02:00")]
    [InlineData(" 2026-04-18T06:40:00Z")]
    [InlineData("1776487200")]
    public void TryRead_AnythingElse_IsRefused(string text) => Assert.False(EnteredInstant.TryRead(text, out _));

    [Theory]
    [InlineData("2026-04-18T06:40:00+02:00")]
    [InlineData("2026-04-18T06:40:00Z")]
    [InlineData("2026-04-18T06:40:00.5-06:00")]
    [InlineData("2026-04-18T06:40:00.123+05:45")]
    public async Task OccurredAt_WithItsOffset_IsGivenBackAsEntered(string text)
    {
        var farm = await Farm.CreateAsync(service);

        var adopted = await farm.AdoptAsync(adoption => adoption.With("/occurredAt", text));

        Assert.Equal(text, adopted.Body.Word("/occurredAt"));
        Assert.Equal(text, (await service.GetAsync($"/v1/adoptions/{adopted.Id}")).Body.Word("/occurredAt"));
        Assert.Equal(text, (await farm.InForceAsync())[0]!["since"]!.GetValue<string>());
        Assert.Equal(text, (await service.ItemsAsync($"/v1/adoptions?machine={farm.Machine}"))[0]["occurredAt"]!.GetValue<string>());
    }

    [Fact]
    public async Task OccurredAt_Stored_IsUtc()
    {
        var farm = await Farm.CreateAsync(service);
        var adopted = await farm.AdoptAsync(adoption => adoption.With("/occurredAt", "2026-04-18T00:30:00+02:00"));

        Assert.Equal(
            "2026-04-17T22:30:00.000Z",
            service.Read<string>("select occurred_at from adoptions where id = @Id", new { adopted.Id })
        );
        Assert.Equal("2026-04-18", adopted.Body.Word("/localDate"));
    }

    // Clocks may differ by a quarter of an hour; the clock of the service stands at 10:00:00 UTC.
    [Theory]
    [InlineData("2026-05-04T10:15:00Z", true)]
    [InlineData("2026-05-04T12:15:00+02:00", true)]
    [InlineData("2026-05-04T10:15:00.001Z", false)]
    [InlineData("2026-05-04T12:00:00Z", false)]
    [InlineData("2126-05-04T10:00:00Z", false)]
    [InlineData("9999-12-31T23:59:59Z", false)]
    [InlineData("1990-01-01T00:00:00Z", true)]
    [InlineData("1989-12-31T23:59:59Z", false)]
    [InlineData("0001-01-01T00:00:00Z", false)]
    public async Task OccurredAt_InTheFutureOrBeforeAnyRecord_IsRefused(string text, bool taken)
    {
        var farm = await Farm.CreateAsync(service);

        foreach (
            var (path, draft) in ((string, Draft)[])
                [("catch-tests", farm.CatchTest), ("adoptions", farm.Adoption), ("scale-checks", farm.ScaleCheck)]
        )
        {
            draft.With("/occurredAt", text);
            if (taken)
                (await service.PostAsync($"/v1/{path}", draft)).Expect(201);
            else
                await (await service.WithoutTraceAsync(() => service.PostAsync($"/v1/{path}", draft))).RefusedAsync(
                    422,
                    "#/occurredAt",
                    "time-wrong"
                );
        }
    }
}
