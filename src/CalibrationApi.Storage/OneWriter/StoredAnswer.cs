namespace CalibrationApi.Storage.OneWriter;

/// <summary>The answer to a storing request, kept so that a repetition gets exactly the same.</summary>
/// <param name="Status">HTTP status.</param>
/// <param name="Location">Address of the record.</param>
/// <param name="ETag">Entity tag with its quotes.</param>
/// <param name="Body">The body, byte for byte.</param>
public sealed record StoredAnswer(int Status, string? Location, string? ETag, byte[] Body);
