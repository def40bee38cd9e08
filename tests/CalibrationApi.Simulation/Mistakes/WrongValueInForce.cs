using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Simulation.Mistakes;

/// <summary>The catches are honest; the number in force that they are compared with is wrong.</summary>
/// <param name="Factor">The number given over the right one.</param>
public sealed record WrongValueInForce(double Factor) : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => 1 / Factor;

    internal override CatchTestQuestion InTheQuestion(CatchTestQuestion question) =>
        question.Reference is { } reference
            ? question with
            {
                Reference = reference with { Value = new MassPerRevolution(reference.Value.KilogramsPerRevolution * Factor) },
            }
            : throw new InvalidOperationException("A test without a value in force cannot have a wrong one.");
}
