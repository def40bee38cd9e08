namespace CalibrationApi.Tests.Evidence.History;

/// <summary>A service with a season of two machines in it.</summary>
public sealed class SeasonService : IAsyncLifetime, IDisposable
{
    internal RecordService Service { get; } = new();

    internal Farm One { get; private set; } = null!;

    internal Farm Two { get; private set; } = null!;

    internal string Plan { get; private set; } = "";

    /// <summary>A test that was superseded, and the one in its place.</summary>
    internal (string Wrong, string Right) Corrected { get; private set; }

    public async Task InitializeAsync()
    {
        One = await Farm.CreateAsync(Service);
        Two = await Farm.CreateAsync(Service, machine => machine.With("/timeZone", "America/Regina"));
        Plan = await Service.CreateAsync("/v1/plans", One.PlanDraft);
        await One.CheckScaleAsync();
        await Two.CheckScaleAsync(check => check.With("/readings/0", Farm.Reading(20, 20.2)).With("/occurredAt", "2026-03-03T08:00:00Z"));
        await One.AdoptAsync();
        await One.TestAsync(test => test.With("/plan", Plan));
        await One.TestAsync(test => test.With("/element", "fine").With("/occurredAt", "2026-04-19T06:00:00Z").With("/setting", "low"));
        await One.TestAsync(test =>
            test.With("/meter", "rear").With("/element", "small seed").With("/occurredAt", "2026-04-20T06:00:00Z").Without("/lot")
        );
        await One.TestAsync(test => test.With("/catches", Farm.Catches(0.30, 0.40, 0.50)).With("/occurredAt", "2026-04-21T06:00:00Z"));
        var wrong = (await Two.TestAsync(test => test.With("/occurredAt", "2026-04-22T05:59:00Z"))).Id;
        // The same instant as another machine's test.
        var right = (
            await Two.TestAsync(test => test.With("/occurredAt", "2026-04-18T04:40:00Z").With("/supersedes", Farm.Supersedes(wrong)))
        ).Id;
        Corrected = (wrong, right);
        await Two.AdoptAsync(adoption =>
            adoption.With("/test", right).With("/typedIn", Draft.Quantity(363, "g/rev")).With("/occurredAt", "2026-04-23T06:00:00Z")
        );
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => Service.Dispose();
}
