using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Adoptions;

/// <summary>A number in the controller, and what is known against it.</summary>
/// <param name="Value">The mass per revolution that it stands for.</param>
/// <param name="Findings">What was noticed about it.</param>
public sealed record JudgedValue(MassPerRevolution Value, IReadOnlyList<Finding> Findings)
{
    /// <summary>What it is good for.</summary>
    public Usability Verdict => Judgement.Of(Findings);

    /// <summary>The value, and the gravest of what was noticed.</summary>
    public Sentence Headline =>
        Verdict == Usability.Usable
            ? (Sentence)$"The number typed in stands for {Value}. Nothing on record speaks against it."
            : $"The number typed in stands for {Value}. {Findings.MaxBy(finding => finding.Severity)!.Detail}";
}
