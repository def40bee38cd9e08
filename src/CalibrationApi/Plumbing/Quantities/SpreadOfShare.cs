namespace CalibrationApi.Plumbing.Quantities;

/// <summary>What to say of a share whose mean and spread cannot be together.</summary>
internal static class SpreadOfShare
{
    /// <summary>A share between 0 and 100 % cannot spread without bounds.</summary>
    public const string Impossible =
        "No share between 0 and 100 % has this mean and this spread: near the ends it can only differ a little. Check both, or lower the spread.";
}
