namespace CalibrationApi.Storage;

/// <summary>
/// The database cannot be used until whoever runs the service does something about it; the message says what, and names no path.
/// </summary>
public sealed class UnusableDatabaseException(string message, Exception? cause = null) : Exception(message, cause);
