namespace CalibrationApi.Plumbing.Contract;

/// <summary>Says beside the code of an error which statuses it comes with.</summary>
[AttributeUsage(AttributeTargets.Field)]
internal sealed class StatusesAttribute(params int[] all) : Attribute
{
    public IReadOnlyList<int> All => all;
}
