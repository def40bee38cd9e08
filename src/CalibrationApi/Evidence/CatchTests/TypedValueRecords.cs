using System.Globalization;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Describing;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Products;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Records;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>What the records knew, when a number was typed in, that it can be compared with.</summary>
internal static class TypedValueRecords
{
    /// <summary>
    /// The number beside the value in force before, or the last test where there was none, and the other products of its element.
    /// </summary>
    /// <param name="typed">The number.</param>
    /// <param name="records">The records.</param>
    /// <param name="series">Where it was typed in.</param>
    /// <param name="lot">With which lot; null when none was named.</param>
    /// <param name="at">When.</param>
    /// <param name="except">Id of an adoption that does not count: its own, or the one that it corrects.</param>
    public static TypedValue Surround(
        TypedValue typed,
        RecordsReadOnce records,
        Series series,
        string? lot,
        DateTimeOffset at,
        string? except
    )
    {
        var before = AdoptionStore.InForce(records.Connection, records.Workspace, series, at, except);
        return typed with
        {
            Before = before is null ? null : new MassPerRevolution(before.Value),
            LastMeasured =
                before is null && LastMeasured.Of(records.Connection, records.Workspace, series, at) is { } last
                    ? new MeasuredBefore(
                        new(last.Estimate.Value.Value),
                        last.Estimate.Value.ExpandedUncertainty,
                        $"the test of {EnteredInstant.Write(last.Record.OccurredAt).Split('T')[0]}"
                    )
                    : null,
            Density = DensityOf(records, series.Product, lot),
            OtherProducts =
            [
                .. AdoptionStore
                    .OfOtherProducts(records.Connection, records.Workspace, series, at)
                    .Select(other => new ValueOfOtherProduct(
                        records.Find<ProductRequest>(RecordKind.Products, other.Product)!.Name!,
                        new(new MassPerRevolution(other.Value.Value), other.Value.Random),
                        DensityOf(records, other.Product, other.Value.Lot)
                    )),
            ],
        };
    }

    /// <summary>
    /// What speaks against a value in force that was stated beside a test. What the element can hold, the test itself says.
    /// </summary>
    public static IReadOnlyList<Finding> DoubtsAbout(
        ReferenceOfTest stated,
        RecordsReadOnce records,
        Series series,
        string? lot,
        DateTimeOffset at
    ) =>
        TypedValueCheck.DoubtsAbout(
            Surround(
                new TypedValue
                {
                    Value = stated.Read(),
                    InWords = string.Create(CultureInfo.InvariantCulture, $"{stated.Value} {stated.Unit}"),
                },
                records,
                series,
                lot,
                at,
                except: null
            )
        );

    /// <summary>Bulk density of the lot, or of the product; null when neither has one.</summary>
    public static Uncertain<BulkDensity>? DensityOf(RecordsReadOnce records, string product, string? lot) =>
        BulkDensityQuantity.Read(
            (lot is null ? null : records.Find<LotRequest>(RecordKind.Lots, lot)?.BulkDensity)
                ?? records.Find<ProductRequest>(RecordKind.Products, product)?.BulkDensity
        )
            is { } density
            ? new(density)
            : null;
}
