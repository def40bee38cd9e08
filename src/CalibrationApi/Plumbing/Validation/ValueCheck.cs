using System.Globalization;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Plumbing.Validation;

/// <summary>Checks a text, a quantity or a part of a request, as a member or as an item of a list.</summary>
internal abstract class ValueCheck
{
    public abstract void Run(object value, Place place, ref Faults faults);
}

internal sealed class TextCheck(TextRuleAttribute rule) : ValueCheck
{
    public override void Run(object value, Place place, ref Faults faults)
    {
        if (rule.Fault((string)value, faults.Clock) is var (code, detail))
            faults.Add(place, code, detail);
    }
}

/// <summary>A quantity and, where it has members beside number and unit, those.</summary>
internal sealed class QuantityCheck(Dimension dimension, MeasuredAttribute rule, ValueCheck? more) : ValueCheck
{
    private readonly QuantityLimits limits = rule.Limits(dimension);

    public override void Run(object value, Place place, ref Faults faults)
    {
        var quantity = (Quantity)value;
        if (
            quantity.Value is not { } number
            || quantity.Unit is not { } symbol
            || UnitTable.Find(symbol) is not { } unit
            || unit.Dimension != dimension
            || !limits.Allows(unit.Canonical(number))
        )
            Tell(quantity, place, ref faults);
        more?.Run(value, place, ref faults);
    }

    private void Tell(Quantity quantity, Place place, ref Faults faults)
    {
        var fault = Rules.UnitFault(quantity.Unit, dimension);
        if (fault is var (code, detail))
            faults.Add(place, code, detail);
        var told = rule.Told(dimension);
        if (quantity.Value is not { } number)
            faults.Add(place, ErrorCodes.MemberMissing, "The value is missing. Give a number beside the unit.", ".Value");
        else if (!double.IsFinite(number))
            faults.Add(place, ErrorCodes.NumberOutOfRange, $"This number is too large for any machine. It has to be {told}.");
        else if (fault is null)
            faults.Add(
                place,
                ErrorCodes.NumberOutOfRange,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{number} {quantity.Unit} is out of range. It has to be {told}. Check the number and its unit."
                )
            );
    }
}

/// <summary>A part with members of its own.</summary>
internal sealed class PartCheck(Type type) : ValueCheck
{
    // Made when the first such part comes: most requests leave most parts out.
    private RequestPlan? plan;

    public override void Run(object value, Place place, ref Faults faults)
    {
        var first = faults.Count;
        (plan ??= RequestPlan.Of(type)).Check(value, ref faults);
        if (faults.Count > first)
            faults.Place(first, place);
    }
}
