namespace CalibrationApi.Plumbing.Operations;

/// <summary>A header that an operation sends with a status, for the contract.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it says.</param>
/// <param name="Status">The status it comes with.</param>
/// <param name="IsAlwaysSent">It comes with every answer of that status, not only with some.</param>
internal sealed record AnswerHeader(string Name, string Description, int Status, bool IsAlwaysSent = true);

/// <summary>Declares headers on a route.</summary>
internal static class AnswerHeaderRoutes
{
    /// <summary>Tells the contract that the route sends a header with every answer of a status.</summary>
    public static TBuilder Sends<TBuilder>(this TBuilder route, string name, string description, int status = StatusCodes.Status200OK)
        where TBuilder : IEndpointConventionBuilder => route.WithMetadata(new AnswerHeader(name, description, status));
}
