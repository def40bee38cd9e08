namespace CalibrationApi.Plumbing.Operations;

/// <summary>
/// Says of a route that the comments of a type describe it: its summary and remarks, <c>request</c> what is sent,
/// <c>response</c> what is answered, and <c>units</c>, where there is more to say of them than usual.
/// </summary>
/// <param name="Type">The type.</param>
internal sealed record DescribedBy(Type Type);
