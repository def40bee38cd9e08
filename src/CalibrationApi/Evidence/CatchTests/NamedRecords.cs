using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Records.Containers;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Plans;
using CalibrationApi.Records.Products;
using CalibrationApi.Records.Reading;
using CalibrationApi.Records.Referring;
using CalibrationApi.Records.Scales;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>The records that a test names.</summary>
internal sealed record NamedRecords(
    MachineRequest Machine,
    MeterOfMachine Meter,
    ElementOfMachine Element,
    ProductRequest Product,
    LotRequest? Lot,
    ScaleRequest Scale,
    PlanRequest? Plan
)
{
    public ContainerRequest? Container { get; private init; }

    public string TimeZone => Machine.TimeZone ?? LocalDate.Utc;

    /// <summary>Reads them.</summary>
    /// <returns>The records, or every error.</returns>
    public static (NamedRecords? Named, IReadOnlyList<ProblemError> Errors) Read(WorkspaceReader reader, RecordCatchTestRequest request)
    {
        var records = new ReferredRecords(reader);
        var machine = records.Machine(request.Machine!, nameof(request.Machine));
        var product = records.Product(request.Product!, nameof(request.Product));
        var lot = request.Lot is { } lotId ? records.Lot(lotId, request.Product!, nameof(request.Lot)) : null;
        var scale = records.Scale(request.Scale!, nameof(request.Scale));
        var container = request.Container is { } containerId ? records.Container(containerId, nameof(request.Container)) : null;
        var plan = request.Plan is { } planId ? ReadPlan(records, planId, request.Machine!) : null;
        var meter = machine is null ? null : records.Meter(machine, request.Meter!, nameof(request.Meter));
        var element = meter is null ? null : records.Element(meter, request.Element!, nameof(request.Element));
        return records.Errors.Count > 0
            ? (null, records.Errors)
            : (new NamedRecords(machine!, meter!, element!, product!, lot, scale!, plan) { Container = container }, []);
    }

    private static PlanRequest? ReadPlan(ReferredRecords records, string id, string machine)
    {
        const string Member = nameof(RecordCatchTestRequest.Plan);
        var plan = records.Find<PlanRequest>(RecordKind.Plans, id, Member);
        if (plan is not null && plan.Machine != machine)
            records.Add(Member, ErrorCodes.RecordsAtOdds, "This plan is for another machine. Check plan and machine.");
        return plan;
    }
}
