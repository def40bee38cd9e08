namespace CalibrationApi.Engine.Answers;

/// <summary>Says beside the code of a finding how much it can matter.</summary>
/// <param name="all">Each severity that the finding comes with.</param>
[AttributeUsage(AttributeTargets.Field)]
public sealed class SeveritiesAttribute(params Severity[] all) : Attribute
{
    /// <summary>Each severity that the finding comes with.</summary>
    public IReadOnlyList<Severity> All => all;
}
