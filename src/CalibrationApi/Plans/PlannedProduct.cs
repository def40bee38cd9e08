using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Quantities;

namespace CalibrationApi.Plans;

/// <summary>A product over the whole working width, from one meter or from several that share it.</summary>
/// <param name="Meters">Its meters; either all have a rate or none has.</param>
/// <param name="WorkingWidth">Width that the machine works, where it is known.</param>
internal sealed record PlannedProduct(IReadOnlyList<PlannedMeter> Meters, LengthQuantity? WorkingWidth)
{
    // Widths are told in whole centimetres or inches; judgement.
    private const double Overlap = 1.001;

    private bool IsFixed => Meters[0].Rate is not null;

    private double Widths => Meters.Sum(meter => meter.ShareOf(WorkingWidth));

    /// <summary>What it can bring. Meters of a part of the width bring as much less on the whole field.</summary>
    /// <param name="withPrice">Its price counts.</param>
    public ProductOffer Offer(bool withPrice) => new()
    {
        Name = Meters[0].Product.Name,
        Analysis = Meters[0].Product.Analysis,
        Price = withPrice ? Meters[0].Product.Price : null,
        FixedRate = IsFixed ? Like(Meters[0].Rate!, Meters.Sum(meter => meter.Rate!.Canonical() * meter.ShareOf(WorkingWidth))) : null,
    };

    /// <summary>The rate of each meter when none has one yet: the same for all, so that together they put down what is wanted on the field.</summary>
    public IEnumerable<(int Meter, MassPerAreaQuantity Rate)> Rates(MassPerAreaQuantity onField) =>
        IsFixed ? [] : Meters.Select(meter => (meter.Index, Widths == 1 ? onField : Like(onField, onField.Canonical() / Widths)));

    /// <summary>The meters whose rates add up in one row: the one with the highest rate where they work side by side, else all.</summary>
    public IReadOnlyList<PlannedMeter> InOneRow() => Widths <= Overlap ? [Meters.MaxBy(meter => meter.Rate!.Canonical())!] : Meters;

    private static MassPerAreaQuantity Like(MassPerAreaQuantity like, double canonical) => AnswerUnits.For(null, Quantity.UnitOf(like)).Rate(new MassPerArea(canonical));
}
