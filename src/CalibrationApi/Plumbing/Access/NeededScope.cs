using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Operations;
using Microsoft.AspNetCore.Authorization;

namespace CalibrationApi.Plumbing.Access;

/// <summary>The scope that a route needs; the policy of the same name asks for it.</summary>
internal sealed class NeededScope(string scope) : IAuthorizeData
{
    public string Scope => scope;

    // The policy has the name of the scope.
    string? IAuthorizeData.Policy
    {
        get => scope;
        set => throw new NotSupportedException();
    }

    string? IAuthorizeData.Roles { get; set; }

    string? IAuthorizeData.AuthenticationSchemes { get; set; }
}

/// <summary>Says of routes who may use them.</summary>
internal static class NeededScopeRoutes
{
    private const string ChallengeSays = "Which credential is wanted and, where one came, what was wrong with it (RFC 6750).";

    /// <summary>Only a key with that scope may use the route.</summary>
    public static TBuilder Needs<TBuilder>(this TBuilder route, string scope)
        where TBuilder : IEndpointConventionBuilder =>
        route.WithMetadata(
            new NeededScope(scope),
            Problem(StatusCodes.Status400BadRequest),
            Problem(StatusCodes.Status401Unauthorized),
            Problem(StatusCodes.Status403Forbidden),
            new AnswerHeader("WWW-Authenticate", ChallengeSays, StatusCodes.Status400BadRequest, IsAlwaysSent: false),
            new AnswerHeader("WWW-Authenticate", ChallengeSays, StatusCodes.Status401Unauthorized),
            new AnswerHeader("WWW-Authenticate", ChallengeSays, StatusCodes.Status403Forbidden)
        );

    /// <summary>Everybody may use the route, with or without a key.</summary>
    public static TBuilder IsPublic<TBuilder>(this TBuilder route)
        where TBuilder : IEndpointConventionBuilder => route.WithMetadata(new AllowAnonymousAttribute());

    /// <summary>Fails the start of the host when a route of the group says neither.</summary>
    public static TBuilder WithScopeForEveryRoute<TBuilder>(this TBuilder group)
        where TBuilder : IEndpointConventionBuilder
    {
        group.Finally(route =>
        {
            if (route.Metadata.OfType<NeededScope>().Count() + route.Metadata.OfType<IAllowAnonymous>().Count() != 1)
                throw new InvalidOperationException(
                    $"{route.DisplayName} says not who may use it, or says it twice. Add {nameof(Needs)} or {nameof(IsPublic)} to the route."
                );
        });
        return group;
    }

    private static ProducesResponseTypeMetadata Problem(int status) => new(status, typeof(Problem), [ProblemResult.MediaType]);
}
