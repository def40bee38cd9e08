using System.Text.Json;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Containers;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Products;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Records;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>
/// What the records say around a stored test: other containers, elements and products that may have been mistaken for the ones named.
/// </summary>
internal sealed record MistakeContextRecords
{
    private const int MostOthers = CatchTestData.MostOthers;

    public bool? NewLot { get; private init; }

    public IReadOnlyList<OtherContainerOfTest?>? OtherContainers { get; private init; }

    public IReadOnlyList<OtherDeliveryOfTest?>? OtherElements { get; private init; }

    public IReadOnlyList<OtherDeliveryOfTest?>? OtherProducts { get; private init; }

    /// <summary>Reads them.</summary>
    /// <param name="connection">A connection.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="request">The test.</param>
    /// <param name="series">What was tested.</param>
    /// <param name="meter">Its meter.</param>
    /// <param name="density">Bulk density of the product or its lot.</param>
    /// <param name="compared">The value that the test is compared with; null when there is none.</param>
    /// <param name="lotBehind">Id of the lot that the value on record was found with; null when a stated value is compared with, or no lot
    /// was named.</param>
    /// <param name="at">When the test was made.</param>
    public static MistakeContextRecords Of(
        SqliteConnection connection,
        Workspace workspace,
        RecordCatchTestRequest request,
        Series series,
        MeterOfMachine meter,
        BulkDensityQuantity? density,
        ReferenceOfTest? compared,
        string? lotBehind,
        DateTimeOffset at
    )
    {
        var inForce = AdoptionStore.InForceOnMachine(connection, workspace, series.Machine, at);
        return new MistakeContextRecords
        {
            NewLot = request.NewLot ?? (lotBehind is not null && request.Lot is not null ? lotBehind != request.Lot : null),
            OtherContainers = NullIfNone(Containers(connection, workspace, request.Container)),
            // Without a value to compare with, nothing can be mistaken for it.
            OtherElements = compared is null ? null : NullIfNone(Elements(series, meter, inForce, compared)),
            OtherProducts = NullIfNone(Products(connection, workspace, series, density, inForce, compared)),
        };
    }

    private static IEnumerable<OtherContainerOfTest> Containers(SqliteConnection connection, Workspace workspace, string? own) =>
        new DescribedRecordStore(RecordKind.Containers)
            .List(connection, workspace, "", MostOthers + 1, withRetired: false)
            .Where(record => record.Id != own)
            .Select(record =>
                (ContainerRequest)JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(ContainerRequest)))!
            )
            .Select(container => new OtherContainerOfTest { Name = container.Name, Tare = container.Tare });

    // What is in force for another element or setting of this meter; otherwise the displacement says what to expect.
    private static IEnumerable<OtherDeliveryOfTest> Elements(
        Series series,
        MeterOfMachine meter,
        IReadOnlyList<AdoptionRecord> inForce,
        ReferenceOfTest compared
    )
    {
        var known = inForce
            .Where(one =>
                one.Series.Meter == series.Meter
                && one.Series.Product == series.Product
                && (one.Series.Element != series.Element || one.Series.Setting != series.Setting)
            )
            .ToArray();
        foreach (var one in known)
            yield return Delivery(
                one.Series.Setting.Length == 0 ? one.Series.Element : $"{one.Series.Element}, {one.Series.Setting}",
                one.Value,
                compared
            );
        var own = meter.Elements!.First(one => one!.Name == series.Element)!.DisplacementPerRevolution?.Canonical();
        foreach (var element in meter.Elements!)
        {
            if (
                element!.Name != series.Element
                && known.All(one => one.Series.Element != element.Name)
                && own is { } ours
                && element.DisplacementPerRevolution?.Canonical() is { } theirs
            )
                yield return Delivery(element.Name!, compared.Canonical() * theirs / ours, compared);
        }
    }

    // What is in force for another product on this meter and element; otherwise its bulk density says what to expect.
    private static IEnumerable<OtherDeliveryOfTest> Products(
        SqliteConnection connection,
        Workspace workspace,
        Series series,
        BulkDensityQuantity? density,
        IReadOnlyList<AdoptionRecord> inForce,
        ReferenceOfTest? compared
    )
    {
        foreach (
            var product in inForce.Select(one => one.Series.Product).Where(product => product != series.Product).Distinct().Take(MostOthers)
        )
        {
            if (new DescribedRecordStore(RecordKind.Products).Find(connection, workspace, product) is not { } record)
                continue;
            var described = (ProductRequest)
                JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(ProductRequest)))!;
            if (inForce.FirstOrDefault(one => one.Series == series with { Product = product }) is { } known)
            {
                var delivery = Delivery(record.Name, known.Value, compared);
                delivery.BulkDensity = Density(connection, workspace, known.Lot) ?? described.BulkDensity;
                yield return delivery;
                continue;
            }

            if (compared is not null && density is not null && described.BulkDensity is { } theirs)
                yield return Delivery(record.Name, compared.Canonical() * theirs.Canonical() / density.Canonical(), compared);
        }
    }

    // The lot that the value was found with has a density of its own, or none.
    private static BulkDensityQuantity? Density(SqliteConnection connection, Workspace workspace, string? lot) =>
        lot is not null && new DescribedRecordStore(RecordKind.Lots).Find(connection, workspace, lot) is { } record
            ? ((LotRequest)JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(LotRequest)))!).BulkDensity
            : null;

    private static OtherDeliveryOfTest Delivery(string name, double kilogramsPerRevolution, ReferenceOfTest? compared)
    {
        var unit = UnitTable.Get(compared?.Unit ?? "kg/rev");
        var shown = name.EnumerateRunes().Count() <= Rules.LongestName ? name : null;
        return new OtherDeliveryOfTest
        {
            Name = shown,
            MassPerRevolution = new MassPerRevolutionQuantity
            {
                Value = AnswerUnits.Shown(unit.FromCanonical(kilogramsPerRevolution)),
                Unit = unit.Symbol,
            },
        };
    }

    private static T[]? NullIfNone<T>(IEnumerable<T> items) => items.Take(MostOthers).ToArray() is { Length: > 0 } some ? some : null;
}
