using System.Diagnostics.Metrics;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Observability;
using CalibrationApi.Records.Plans;

namespace CalibrationApi.Tests.Records.Plans;

/// <summary>How a set-up is counted.</summary>
public sealed class SetUpCountTests(RecordService service) : IClassFixture<RecordService>
{
    // The stand takes a seeding rate, the meter its speeds, the element a volume: all of it is one answer to one question.
    [Fact]
    public async Task SetUp_OneGet_IsOneEvaluationOfItsOwnName()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync(
            "/v1/plans",
            farm.PlanDraft.Without("/meters/0/targetRate")
                .With(
                    "/meters/0/stand",
                    Draft.Json("""{ "plants": { "value": 300, "unit": "/m2" }, "survival": { "value": 75, "unit": "%" } }""")
                )
        );

        var counted = Counted(() => SetUpOfPlan.Handle(plan, service.Database, Workspace.Local));

        Assert.Equal([("plan-set-up", "ready", 1)], counted);
    }

    // Other tests count at the same time, on threads of their own.
    private static List<(string? Kind, string? Outcome, long Count)> Counted(Action ask)
    {
        var counted = new List<(string?, string?, long)>();
        var thread = Environment.CurrentManagedThreadId;
        using var listener = new MeterListener();
        listener.InstrumentPublished = (instrument, listening) =>
        {
            if (instrument.Meter.Name == Evaluations.Meter)
                listening.EnableMeasurementEvents(instrument);
        };
        listener.SetMeasurementEventCallback<long>(
            (_, count, tags, _) =>
            {
                if (Environment.CurrentManagedThreadId == thread)
                    counted.Add((tags[0].Value as string, tags[1].Value as string, count));
            }
        );
        listener.Start();
        ask();
        return counted;
    }
}
