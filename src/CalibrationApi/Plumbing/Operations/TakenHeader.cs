namespace CalibrationApi.Plumbing.Operations;

/// <summary>A header that an operation takes, for the contract.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it says and when to send it.</param>
/// <param name="Example">How it looks.</param>
/// <param name="Longest">Most characters.</param>
/// <param name="IsNeeded">Without it the request is refused.</param>
internal sealed record TakenHeader(string Name, string Description, string Example, int Longest = 500, bool IsNeeded = false);
