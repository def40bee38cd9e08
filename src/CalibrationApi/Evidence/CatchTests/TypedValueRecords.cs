using System.Globalization;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>What the records knew, when a number was typed in, that it can be compared with.</summary>
internal static class TypedValueRecords
{
    /// <summary>
    /// The number beside the value in force before, or the last test where there was none, and the other products of its element.
    /// </summary>
    /// <param name="typed">The number.</param>
    /// <param name="reader">Reads the records.</param>
    /// <param name="series">Where it was typed in.</param>
    /// <param name="lot">With which lot; null when none was named.</param>
    /// <param name="at">When.</param>
    /// <param name="except">Id of an adoption that does not count: its own, or the one that it corrects.</param>
    public static TypedValue Surround(
        TypedValue typed,
        WorkspaceReader reader,
        Series series,
        string? lot,
        DateTimeOffset at,
        string? except
    )
    {
        var before = reader.InForce(series, at, except);
        return typed with
        {
            Before = before is null ? null : new MassPerRevolution(before.Value),
            LastMeasured =
                before is null && LastMeasured.Of(reader, series, at) is { } last
                    ? new MeasuredBefore(
                        new(last.Estimate.Value.Value),
                        last.Estimate.Value.ExpandedUncertainty,
                        $"the test of {EnteredInstant.Write(last.Record.OccurredAt).Split('T')[0]}"
                    )
                    : null,
            Density = DensityOf(reader, series.Product, lot),
            OtherProducts =
            [
                .. reader
                    .InForceForOtherProducts(series, at)
                    .Select(other => new ValueOfOtherProduct(
                        reader.Product(other.Product)!.Name!,
                        new(new MassPerRevolution(other.Value.Value), other.Value.Random),
                        DensityOf(reader, other.Product, other.Value.Lot)
                    )),
            ],
        };
    }

    /// <summary>
    /// What speaks against a value in force that was stated beside a test. What the element can hold, the test itself says.
    /// </summary>
    public static IReadOnlyList<Finding> DoubtsAbout(
        ReferenceOfTest stated,
        WorkspaceReader reader,
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
                reader,
                series,
                lot,
                at,
                except: null
            )
        );

    private static Uncertain<BulkDensity>? DensityOf(WorkspaceReader reader, string product, string? lot) =>
        BulkDensityQuantity.Read(reader.DensityOf(product, lot)) is { } density ? new(density) : null;
}
