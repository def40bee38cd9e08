using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Http;
using CalibrationApi.Storing;

namespace CalibrationApi.CatchTests;

/// <summary>Rules of a catch test that is kept.</summary>
internal sealed class RecordCatchTestRequestValidator : CatchTestDataValidator<RecordCatchTestRequest>
{
    public RecordCatchTestRequestValidator(TimeProvider clock)
    {
        RuleFor(test => test.Id).NewId();
        RuleFor(test => test.Machine).Needed();
        RuleFor(test => test.Machine).Text(64);
        RuleFor(test => test.Meter).Needed();
        RuleFor(test => test.Meter).Text(Rules.LongestName);
        RuleFor(test => test.Element).Needed();
        RuleFor(test => test.Element).Text(Rules.LongestName);
        RuleFor(test => test.Setting).Text(Rules.LongestName);
        RuleFor(test => test.Product).Needed();
        RuleFor(test => test.Product).Text(64);
        RuleFor(test => test.Lot).Text(64);
        RuleFor(test => test.Scale).Needed();
        RuleFor(test => test.Scale).Text(64);
        RuleFor(test => test.Container).Text(64);
        RuleFor(test => test.Plan).Text(64);
        RuleFor(test => test.OccurredAt).Needed();
        RuleFor(test => test.OccurredAt).Instant(clock);
        RuleFor(test => test.RecordedBy).Needed();
        RuleFor(test => test.RecordedBy).Text(Rules.LongestName);
        RuleFor(test => test.Conditions!).SetValidator(new ConditionsValidator());
        RuleFor(test => test.Note).Text(2000);
        RuleFor(test => test.Supersedes!).SetValidator(new SupersedesValidator());
    }
}

internal sealed class SupersedesValidator : RequestValidator<Supersedes>
{
    public SupersedesValidator()
    {
        RuleFor(supersedes => supersedes.Record).Needed();
        RuleFor(supersedes => supersedes.Record).Text(64);
        RuleFor(supersedes => supersedes.Reason).Needed();
        RuleFor(supersedes => supersedes.Reason).Text(500);
    }
}
