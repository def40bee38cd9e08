using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Answers;

/// <summary>
/// A value that is used where the caller states none, with where it comes from: one home for the computation and for what is said about it.
/// </summary>
/// <param name="Value">The value.</param>
/// <param name="Origin">Published source, common practice or judgement, in words.</param>
public sealed record DefaultValue(IQuantity Value, string Origin)
{
    /// <summary>The assumption of an answer that used it.</summary>
    /// <param name="name">The member that overrides it.</param>
    public Assumption Assumed(string name) => new(name, Value, Origin);
}
