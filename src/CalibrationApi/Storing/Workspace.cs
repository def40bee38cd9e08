namespace CalibrationApi.Storing;

/// <summary>The workspace of a request. Until there are keys, everybody on this machine works in one.</summary>
internal static class Workspace
{
    public const string Local = "local";
}
