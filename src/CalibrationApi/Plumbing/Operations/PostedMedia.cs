namespace CalibrationApi.Plumbing.Operations;

/// <summary>Says of a route that reads its body itself what can be sent to it.</summary>
/// <param name="Types">Media types, as the header Accept-Post lists them.</param>
internal sealed record PostedMedia(string Types);
