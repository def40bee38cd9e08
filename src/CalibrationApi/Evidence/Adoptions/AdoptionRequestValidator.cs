using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Evidence.Adoptions;

internal sealed class TypedNumberValidator : AbstractValidator<TypedNumber>
{
    public TypedNumberValidator()
    {
        RuleFor(typed => typed)
            .Custom(
                (typed, context) =>
                {
                    if (string.IsNullOrEmpty(typed.Unit))
                        context.Report(
                            "",
                            ErrorCodes.UnitMissing,
                            "A number without a unit cannot be used. Add the unit that the controller shows."
                        );
                    else if (UnitTable.Ambiguous.TryGetValue(typed.Unit, out var meanings))
                        context.Report(
                            "",
                            ErrorCodes.UnitAmbiguous,
                            $"This unit can mean more than one. Write which: {string.Join(", ", meanings)}."
                        );
                    else if (UnitTable.Find(typed.Unit) is null)
                        context.Report(
                            "",
                            ErrorCodes.UnitUnknown,
                            "This is not a unit known here. Use one of those that GET /v1/units lists."
                        );
                }
            );
    }
}
