using CalibrationApi.Access;
using CalibrationApi.Http;
using CalibrationApi.Storing;

namespace CalibrationApi.Keys;

/// <summary>Rules of a new key.</summary>
internal sealed class KeyRequestValidator : RequestValidator<KeyRequest>
{
    public KeyRequestValidator(TimeProvider clock)
    {
        RuleFor(key => key.Id).NewId();
        RuleFor(key => key.Name).Needed();
        RuleFor(key => key.Name).Text(KeyRequest.LongestName);
        RuleFor(key => key.Scopes).Needed();
        RuleFor(key => key.Scopes).Items(1, Scope.OfWorkspace.Count);
        RuleForEach(key => key.Scopes).Word(Scope.OfWorkspace);
        RuleFor(key => key.ExpiresAt).InstantAhead(clock);
    }
}

/// <summary>Rules of a rotation.</summary>
internal sealed class RotationRequestValidator : RequestValidator<RotationRequest>
{
    public RotationRequestValidator(TimeProvider clock)
    {
        RuleFor(rotation => rotation.Id).NewId();
        RuleFor(rotation => rotation.Until).Needed();
        RuleFor(rotation => rotation.Until).InstantAhead(clock);
        RuleFor(rotation => rotation.ExpiresAt).InstantAhead(clock);
    }
}

/// <summary>Rules of a revocation.</summary>
internal sealed class RevocationRequestValidator : RequestValidator<RevocationRequest>
{
    public RevocationRequestValidator()
    {
        RuleFor(revocation => revocation.Reason).Needed();
        RuleFor(revocation => revocation.Reason).Text(KeyRequest.LongestReason);
    }
}
