namespace CalibrationApi.Testing;

/// <summary>An answer is not what the contract says.</summary>
/// <param name="message">Which answer, and every difference.</param>
public sealed class ContractViolationException(string message) : Exception(message);
