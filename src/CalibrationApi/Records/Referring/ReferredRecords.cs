using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Records.Containers;
using CalibrationApi.Records.Describing;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Products;
using CalibrationApi.Records.Reading;
using CalibrationApi.Records.Scales;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Referring;

/// <summary>Reads the records that evidence refers to, and collects what does not fit.</summary>
internal sealed class ReferredRecords(WorkspaceReader known)
{
    public List<ProblemError> Errors { get; } = [];

    /// <summary>Reads without asking whether a record is there and in use.</summary>
    public WorkspaceReader Known => known;

    public MachineRequest? Machine(string id, string member) => Find<MachineRequest>(RecordKind.Machines, id, member);

    public ProductRequest? Product(string id, string member) => Find<ProductRequest>(RecordKind.Products, id, member);

    public ScaleRequest? Scale(string id, string member) => Find<ScaleRequest>(RecordKind.Scales, id, member);

    public ContainerRequest? Container(string id, string member) => Find<ContainerRequest>(RecordKind.Containers, id, member);

    public LotRequest? Lot(string id, string product, string member)
    {
        var lot = Find<LotRequest>(RecordKind.Lots, id, member);
        if (lot is not null && lot.Product != product)
            Add(member, ErrorCodes.RecordsAtOdds, "This lot belongs to another product. Check lot and product.");
        return lot;
    }

    public MeterOfMachine? Meter(MachineRequest machine, string position, string member)
    {
        var meter = machine.Meters!.FirstOrDefault(one => one!.Position == position);
        if (meter is null)
            Add(
                member,
                ErrorCodes.MeterNotOnMachine,
                $"The machine has no meter at this position. Use one of: {string.Join(", ", machine.Meters!.Select(one => one!.Position))}."
            );
        return meter;
    }

    public ElementOfMachine? Element(MeterOfMachine meter, string name, string member)
    {
        var element = meter.Elements!.FirstOrDefault(one => one!.Name == name);
        if (element is null)
            Add(
                member,
                ErrorCodes.ElementNotInMeter,
                $"The meter has no element of this name. Use one of: {string.Join(", ", meter.Elements!.Select(one => one!.Name))}."
            );
        return element;
    }

    public T? Find<T>(RecordKind kind, string id, string member)
        where T : DescribedRequest
    {
        if (Known.Find<T>(kind, id) is not { } record)
        {
            Errors.Add(Pages.UnknownId(member, kind));
            return null;
        }

        if (record.Retired is true)
            Add(
                member,
                ErrorCodes.RecordRetired,
                "This record is retired and takes no new evidence. Use another, or describe it anew without 'retired'."
            );
        return record;
    }

    /// <summary>Notes what does not fit.</summary>
    public void Add(string member, ErrorCode code, string detail) =>
        Errors.Add(
            new ProblemError
            {
                Pointer = RequestFilter.Pointer(member),
                Code = code,
                Detail = detail,
            }
        );
}
