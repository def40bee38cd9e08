using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.CatchTests;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Storing;
using FluentValidation;

namespace CalibrationApi.Adoptions;

/// <summary>Rules of an adoption.</summary>
internal sealed class AdoptionRequestValidator : RequestValidator<AdoptionRequest>
{
    public AdoptionRequestValidator(TimeProvider clock)
    {
        RuleFor(adoption => adoption.Id).NewId();
        RuleFor(adoption => adoption.Machine).Needed();
        RuleFor(adoption => adoption.Machine).Text(64);
        RuleFor(adoption => adoption.Meter).Needed();
        RuleFor(adoption => adoption.Meter).Text(Rules.LongestName);
        RuleFor(adoption => adoption.Element).Needed();
        RuleFor(adoption => adoption.Element).Text(Rules.LongestName);
        RuleFor(adoption => adoption.Setting).Text(Rules.LongestName);
        RuleFor(adoption => adoption.Product).Needed();
        RuleFor(adoption => adoption.Product).Text(64);
        RuleFor(adoption => adoption.Lot).Text(64);
        RuleFor(adoption => adoption.Test).Text(64);
        RuleFor(adoption => adoption.TypedIn).Needed();
        RuleFor(adoption => adoption.TypedIn!).SetValidator(new TypedNumberValidator());
        RuleFor(adoption => adoption.MeterSpeed).Measured();
        RuleFor(adoption => adoption.Why).Needed();
        RuleFor(adoption => adoption.Why).Text(500);
        RuleFor(adoption => adoption.Despite).Items(1, TypedValueCheck.Codes.Count);
        RuleForEach(adoption => adoption.Despite!).SetValidator(new DespiteValidator()!);
        RuleFor(adoption => adoption.OccurredAt).Needed();
        RuleFor(adoption => adoption.OccurredAt).Instant(clock);
        RuleFor(adoption => adoption.RecordedBy).Needed();
        RuleFor(adoption => adoption.RecordedBy).Text(Rules.LongestName);
        RuleFor(adoption => adoption.Supersedes!).SetValidator(new SupersedesValidator());
    }
}

internal sealed class DespiteValidator : RequestValidator<Despite>
{
    public DespiteValidator()
    {
        RuleFor(despite => despite.Code).Needed();
        RuleFor(despite => despite.Code).Word(TypedValueCheck.Codes);
        RuleFor(despite => despite.Reason).Needed();
        RuleFor(despite => despite.Reason).Text(500);
    }
}

internal sealed class TypedNumberValidator : RequestValidator<TypedNumber>
{
    public TypedNumberValidator()
    {
        RuleFor(typed => typed.Value).Needed();
        RuleFor(typed => typed.Value).Number(1e-9, 1e9);
        RuleFor(typed => typed.Unit).ToldWords(ControllerUnits.All);
        RuleFor(typed => typed).Custom((typed, context) =>
        {
            if (string.IsNullOrEmpty(typed.Unit))
                context.Report("", ErrorCode.UnitMissing, "A number without a unit cannot be used. Add the unit that the controller shows.");
            else if (UnitTable.Ambiguous.TryGetValue(typed.Unit, out var meanings))
                context.Report("", ErrorCode.UnitAmbiguous, $"This unit can mean more than one. Write which: {string.Join(", ", meanings)}.");
            else if (UnitTable.Find(typed.Unit) is null)
                context.Report("", ErrorCode.UnitUnknown, "This is not a unit known here. Use one of those that GET /v1/units lists.");
        });
    }
}
