using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>A product over the whole working width, from one meter or from several that share it.</summary>
/// <param name="Meters">Its meters; either all have a rate or none has.</param>
/// <param name="WorkingWidth">Width that the machine works, where it is known.</param>
internal sealed record ProductOnField(IReadOnlyList<MeterRate> Meters, Length? WorkingWidth)
{
    // Widths are told in whole centimetres or inches; judgement.
    private const double Overlap = 1.001;

    private bool IsFixed => Meters[0].Rate is not null;

    private double Widths => Meters.Sum(meter => meter.Meter.ShareOf(WorkingWidth));

    /// <summary>What it can bring. Meters of a part of the width bring as much less on the whole field.</summary>
    /// <param name="withPrice">Its price counts.</param>
    public OfferedProduct Offer(bool withPrice)
    {
        var product = Meters[0].Meter.Product;
        var put = Meters.Sum(meter => (meter.Rate?.KilogramsPerSquareMetre ?? 0) * meter.Meter.ShareOf(WorkingWidth));
        return new()
        {
            Name = product.Name,
            Analysis = product.Analysis,
            PricePerKilogram = withPrice ? product.Price?.PerKilogram : null,
            FixedRate = IsFixed ? new MassPerArea(put) : null,
        };
    }

    /// <summary>The rate of each meter when none has one yet: the same for all, so that together they put down what is wanted.</summary>
    /// <param name="onField">What is wanted on the field.</param>
    public IEnumerable<(MeterToSetUp Meter, MassPerArea Rate)> Rates(MassPerArea onField)
    {
        var each = new MassPerArea(onField.KilogramsPerSquareMetre / Widths);
        return IsFixed ? [] : Meters.Select(meter => (meter.Meter, each));
    }

    /// <summary>The meters whose rates add up in one row: the one with the highest rate where they work side by side, else all.</summary>
    public IReadOnlyList<MeterRate> InOneRow() =>
        Widths <= Overlap ? [Meters.MaxBy(meter => meter.Rate!.Value.KilogramsPerSquareMetre)!] : Meters;
}
