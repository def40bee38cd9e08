using System.Net;
using System.Reflection;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Architecture.Tests;

/// <summary>What holds for every address of the contract.</summary>
public sealed partial class EndpointsTests(RunningHost host) : IClassFixture<RunningHost>
{
    private const string Version = "/v1/";

    [Fact]
    public void Endpoints_Each_HaveANameOfTheirOwn()
    {
        var names = Endpoints()
            .Select(endpoint =>
                endpoint.Metadata.GetMetadata<IEndpointNameMetadata>()?.EndpointName ?? $"none at {endpoint.RoutePattern.RawText}"
            )
            .ToArray();

        Assert.All(names, name => Assert.Matches(CamelCase(), name));
        Assert.Equal(names.Length, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void Endpoints_Each_HaveOneTag()
    {
        Assert.All(Endpoints(), endpoint =>
            Assert.Single(endpoint.Metadata.GetOrderedMetadata<ITagsMetadata>().SelectMany(tags => tags.Tags).Distinct())
        );
    }

    [Fact]
    public void Endpoints_Each_AreKebabCasePaths()
    {
        Assert.All(Endpoints(), endpoint => Assert.Matches(KebabCasePath(), endpoint.RoutePattern.RawText!.TrimEnd('/')));
    }

    [Fact]
    public void Endpoints_Each_SayWhoMayUseThem()
    {
        Assert.All(Endpoints(), endpoint =>
            Assert.Equal(
                endpoint.Metadata.GetMetadata<IAllowAnonymous>() is null,
                endpoint.Metadata.GetMetadata<NeededScope>() is { } needed && Scope.All.Contains(needed.Scope)
            )
        );
    }

    // The binding that is written at build time leaves out what a base class declares, without a word.
    [Fact]
    public void Endpoints_WithAClassOfParameters_HaveThemAllDeclaredInThatClass()
    {
        var classes = Endpoints()
            .SelectMany(endpoint => endpoint.Metadata.GetRequiredMetadata<MethodInfo>().GetParameters())
            .Where(parameter => parameter.IsDefined(typeof(AsParametersAttribute)))
            .Select(parameter => parameter.ParameterType)
            .Distinct()
            .ToArray();

        Assert.NotEmpty(classes);
        Assert.All(
            classes.SelectMany(type => type.GetProperties().Where(property => property.IsDefined(typeof(FromQueryAttribute)))),
            property => Assert.Equal(property.ReflectedType, property.DeclaringType)
        );
    }

    // What is open to everybody is written here once more, so that nothing becomes so by a slip.
    [Fact]
    public void Endpoints_OpenToEverybody_AreUnitsAndCodes()
    {
        Assert.Equal(
            ["listUnits", "listCodes"],
            Endpoints()
                .Where(endpoint => endpoint.Metadata.GetMetadata<IAllowAnonymous>() is not null)
                .Select(endpoint => endpoint.Metadata.GetRequiredMetadata<IEndpointNameMetadata>().EndpointName)
        );
    }

    [Fact]
    public void Group_WithARouteThatSaysNotWhoMayUseIt_FailsTheStart()
    {
        var app = WebApplication.CreateSlimBuilder().Build();
        var group = app.MapGroup("/v1").WithScopeForEveryRoute();
        group.MapGet("/forgotten", () => "anybody");

        void Build() => _ = ((IEndpointRouteBuilder)app).DataSources.SelectMany(source => source.Endpoints).ToArray();

        var failure = Assert.Throws<InvalidOperationException>(Build);

        Assert.Contains("/v1/forgotten", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Group_WithABodyOfWhichNothingIsSaid_FailsTheStart()
    {
        var app = WebApplication.CreateSlimBuilder().Build();
        app.MapGroup("/v1").WithRequestChecks().MapPost("/unchecked", (JsonBody<BodyWithoutRules> body) => body.Value.ToString());

        void Build() => _ = ((IEndpointRouteBuilder)app).DataSources.SelectMany(source => source.Endpoints).ToArray();

        var failure = Assert.Throws<InvalidOperationException>(Build);

        Assert.Contains(nameof(BodyWithoutRules), failure.Message, StringComparison.Ordinal);
    }

    // Whether the checks stand on a route cannot be read from it, only tried: they turn away a query that nobody knows.
    [Fact]
    public async Task Endpoints_Each_TurnAwayAQueryThatNobodyKnows()
    {
        using var client = host.CreateClient();
        foreach (var endpoint in Endpoints())
        {
            var method = Assert.Single(endpoint.Metadata.GetRequiredMetadata<HttpMethodMetadata>().HttpMethods);
            using var request = new HttpRequestMessage(
                new HttpMethod(method),
                new Uri($"{Filled(endpoint.RoutePattern)}?nobody-knows=1", UriKind.Relative)
            );
            if (method is "POST" or "PUT")
                request.Content = new StringContent(
                    "{}",
                    Encoding.UTF8,
                    endpoint.Metadata.GetMetadata<IAcceptsMetadata>()?.ContentTypes[0] ?? "application/json"
                );

            using var response = await client.SendAsync(request);

            var text = await response.Content.ReadAsStringAsync();
            Assert.True(
                response.StatusCode == HttpStatusCode.BadRequest,
                $"{method} {endpoint.RoutePattern.RawText}: {(int)response.StatusCode} {text}"
            );
            using var problem = JsonDocument.Parse(text);
            Assert.Equal("nobody-knows", problem.RootElement.GetProperty("errors")[0].GetProperty("parameter").GetString());
        }
    }

    private RouteEndpoint[] Endpoints()
    {
        RouteEndpoint[] endpoints =
        [
            .. host
                .Services.GetRequiredService<EndpointDataSource>()
                .Endpoints.OfType<RouteEndpoint>()
                .Where(endpoint => endpoint.RoutePattern.RawText!.StartsWith(Version, StringComparison.Ordinal)),
        ];
        Assert.True(endpoints.Length >= 4);
        return endpoints;
    }

    private static string Filled(RoutePattern pattern) =>
        "/"
        + string.Join(
            '/',
            pattern.PathSegments.Select(segment =>
                string.Concat(
                    segment.Parts.Select(part =>
                        part switch
                        {
                            RoutePatternLiteralPart literal => literal.Content,
                            RoutePatternSeparatorPart separator => separator.Content,
                            // Any id of the seventh version of RFC 9562.
                            _ => "019a0000-0000-7000-8000-000000000000",
                        }
                    )
                )
            )
        );

    [GeneratedRegex("^[a-z]+([A-Z][a-z]+)*$")]
    private static partial Regex CamelCase();

    [GeneratedRegex(@"^/v1(/([a-z]+(-[a-z]+)*|\{[a-zA-Z]+(:[^}]*)?\}))+$")]
    private static partial Regex KebabCasePath();

    private sealed class BodyWithoutRules
    {
        public IReadOnlyList<string?>? Texts { get; init; }
    }
}
