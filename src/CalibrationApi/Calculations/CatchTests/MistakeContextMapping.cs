using System.Globalization;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>What is known around a test, from the contract to the engine; and the mistakes it made likely, back.</summary>
internal static class MistakeContextMapping
{
    public static MistakeContext Read(CatchTestRequest request)
    {
        var first = request.Catches![0]!;
        return new MistakeContext
        {
            ContainerCapacity = request is { Container.Volume: { } volume, Product.BulkDensity: { } density }
                ? density.Read().MassOf(volume.Read())
                : null,
            ContainerTare = request.Container?.Tare is { Value: > 0 } tare ? tare.Read() : null,
            OtherContainers = [.. (request.OtherContainers ?? []).Select(other => new OtherContainer(other!.Name, other.Tare!.Read()))],
            OtherElements = Read(request.OtherElements),
            OtherProducts = Read(request.OtherProducts),
            CatchPoints = request.CatchPoints,
            NewLot = request.NewLot,
            CountedAs = CountedAs(first),
            MeterRevolutionsPerTurn = request.MeterRevolutionsPerTurn?.Canonical(),
            ReferenceInPounds = IsPounds(request.ValueInForce ?? request.StartValue),
            EnteredInPounds = IsPounds(first.Net ?? first.Gross),
            ScaleInPounds = IsPounds(request.Scale!.Division),
            RuledOut = [.. MistakeCodes.All.Where(code => request.RuledOutMistakes?.Contains(code.Word) == true)],
        };
    }

    public static LikelyMistakeAnswer ToAnswer(LikelyMistake mistake, AnswerUnits units) =>
        new()
        {
            Code = mistake.Code.Word,
            Catch = mistake.Catch is { } at ? string.Create(CultureInfo.InvariantCulture, $"#/catches/{at}") : null,
            Probability = mistake.Probability,
            BayesFactor = mistake.BayesFactor,
            CannotBeToldApart = mistake.CannotBeToldApart,
            Detail = units.Text(mistake.Detail),
            Parts = units.Parts(mistake.Detail),
            Check = mistake.Code.Remedy,
        };

    /// <summary>What the fitted element is known to deliver of other products; null when that says nothing about this one.</summary>
    public static OtherProductsOfElement? ReadKnownDeliveries(CatchTestRequest request)
    {
        KnownDelivery[] known =
        [
            .. (request.OtherProducts ?? [])
                .Where(other => other!.BulkDensity is not null)
                .Select(other => new KnownDelivery(other!.Name, new(other.MassPerRevolution!.Read()), new(other.BulkDensity!.Read()))),
        ];
        return request.Product?.BulkDensity is { } density && known.Length > 0
            ? new OtherProductsOfElement(new(density.Read()), known)
            : null;
    }

    private static OtherDelivery[] Read(IReadOnlyList<OtherDeliveryOfTest?>? others) =>
        [.. (others ?? []).Select(other => new OtherDelivery(other!.Name, other.MassPerRevolution!.Read()))];

    private static CountSource CountedAs(CatchOfTest one) =>
        one switch
        {
            { Revolutions: not null } => CountSource.Revolutions,
            { Pulses: not null } => CountSource.Pulses,
            { Turns: not null } => CountSource.Turns,
            _ => CountSource.Other,
        };

    private static bool? IsPounds(ReferenceOfTest? reference) =>
        reference?.Unit switch
        {
            "lb/rev" or "oz/rev" => true,
            "kg/rev" or "g/rev" => false,
            _ => null,
        };

    private static bool? IsPounds(MassQuantity? mass) =>
        mass?.Unit switch
        {
            "lb" or "oz" => true,
            "kg" or "g" or "t" => false,
            _ => null,
        };
}
