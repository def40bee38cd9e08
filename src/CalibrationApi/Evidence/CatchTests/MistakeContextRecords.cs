using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.History;

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
    /// <param name="reader">Reads the records.</param>
    /// <param name="request">The test.</param>
    /// <param name="series">What was tested.</param>
    /// <param name="meter">Its meter.</param>
    /// <param name="density">Bulk density of the product or its lot.</param>
    /// <param name="compared">The value that the test is compared with; null when there is none.</param>
    /// <param name="lotBehind">Id of the lot that the value on record was found with; null when a stated value is compared with, or no lot
    /// was named.</param>
    /// <param name="at">When the test was made.</param>
    public static MistakeContextRecords Of(
        WorkspaceReader reader,
        RecordCatchTestRequest request,
        Series series,
        MeterOfMachine meter,
        BulkDensityQuantity? density,
        ReferenceOfTest? compared,
        string? lotBehind,
        DateTimeOffset at
    )
    {
        var inForce = reader.InForceOn(series.Machine, at);
        return new MistakeContextRecords
        {
            NewLot = request.NewLot ?? (lotBehind is not null && request.Lot is not null ? lotBehind != request.Lot : null),
            OtherContainers = NullIfNone(Containers(reader, request.Container)),
            // Without a value to compare with, nothing can be mistaken for it.
            OtherElements = compared is null ? null : NullIfNone(Elements(series, meter, inForce, compared)),
            OtherProducts = NullIfNone(Products(reader, series, density, inForce, compared)),
        };
    }

    /// <summary>Puts them into a question.</summary>
    public void Surround(CatchTestRequest question)
    {
        question.NewLot = NewLot;
        question.OtherContainers = OtherContainers;
        question.OtherElements = OtherElements;
        question.OtherProducts = OtherProducts;
    }

    private static IEnumerable<OtherContainerOfTest> Containers(WorkspaceReader reader, string? own) =>
        reader
            .Containers(MostOthers + 1)
            .Where(one => one.Id != own)
            .Select(one => new OtherContainerOfTest { Name = one.Container.Name, Tare = one.Container.Tare });

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
                new MassPerRevolution(one.Value),
                compared
            );
        var own = meter.Elements!.First(one => one!.Name == series.Element)!.DisplacementPerRevolution?.Read();
        foreach (var element in meter.Elements!)
        {
            if (
                element!.Name != series.Element
                && known.All(one => one.Series.Element != element.Name)
                && own is { } ours
                && element.DisplacementPerRevolution?.Read() is { } theirs
            )
                yield return Delivery(element.Name!, OtherDelivery.OfElement(compared.Read(), ours, theirs), compared);
        }
    }

    // What is in force for another product on this meter and element; otherwise its bulk density says what to expect.
    private static IEnumerable<OtherDeliveryOfTest> Products(
        WorkspaceReader reader,
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
            if (reader.Product(product) is not { } described)
                continue;
            if (inForce.FirstOrDefault(one => one.Series == series with { Product = product }) is { } known)
            {
                var delivery = Delivery(described.Name!, new MassPerRevolution(known.Value), compared);
                delivery.BulkDensity = reader.DensityOf(product, known.Lot);
                yield return delivery;
                continue;
            }

            if (compared is not null && density is not null && described.BulkDensity is { } theirs)
                yield return Delivery(described.Name!, OtherDelivery.OfProduct(compared.Read(), density.Read(), theirs.Read()), compared);
        }
    }

    private static OtherDeliveryOfTest Delivery(string name, MassPerRevolution delivered, ReferenceOfTest? compared)
    {
        var unit = UnitTable.Get(compared?.Unit ?? "kg/rev");
        var shown = name.EnumerateRunes().Count() <= Rules.LongestName ? name : null;
        return new OtherDeliveryOfTest
        {
            Name = shown,
            MassPerRevolution = new MassPerRevolutionQuantity
            {
                Value = AnswerUnits.Shown(unit.FromCanonical(delivered.KilogramsPerRevolution)),
                Unit = unit.Symbol,
            },
        };
    }

    private static T[]? NullIfNone<T>(IEnumerable<T> items) => items.Take(MostOthers).ToArray() is { Length: > 0 } some ? some : null;
}
