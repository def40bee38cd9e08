using System.Reflection;
using System.Text.Json;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Architecture.Tests;

/// <summary>A calculation that is declared is in the list, and with that whole.</summary>
public sealed class CalculationsTests(RunningHost host) : IClassFixture<RunningHost>
{
    private const BindingFlags OfTheTypeItself =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly IReadOnlyList<Calculation> Listed = CalculationList.All;

    private static readonly Calculation[] Declared =
    [
        .. typeof(Program)
            .Assembly.GetTypes()
            .SelectMany(type => type.GetProperties(OfTheTypeItself))
            .Where(property => property.PropertyType.IsAssignableTo(typeof(Calculation)))
            .Select(property => (Calculation)property.GetValue(null)!),
    ];

    [Fact]
    public void Calculations_Declared_AreAllInTheList()
    {
        Assert.True(Declared.Length > 10);
        Assert.Equal(Names(Declared), Names(Listed));
    }

    [Fact]
    public void Calculations_Each_HaveNameTagAndSentenceOfTheirOwn()
    {
        Assert.Equal(Listed.Count, Listed.Select(one => one.Name).Distinct().Count());
        Assert.Equal(Listed.Count, Listed.Select(one => one.Tag).Distinct().Count());
        Assert.Equal(Listed.Count, Listed.Select(one => one.Says).Distinct().Count());
    }

    // What is written under other names than the contract's would be found by nobody before a client misses it.
    [Fact]
    public void Json_OfEach_KnowsItsTypesAsTheContractNamesThem()
    {
        Assert.All(Listed, one =>
        {
            Assert.NotNull(one.Json.GetTypeInfo(one.RequestType));
            Assert.NotNull(one.Json.GetTypeInfo(one.AnswerType));
            Assert.Equal(JsonNamingPolicy.CamelCase, one.Json.Options.PropertyNamingPolicy);
            Assert.Equal(JsonSettings.Contract.DefaultIgnoreCondition, one.Json.Options.DefaultIgnoreCondition);
        });
    }

    [Fact]
    public void Comments_OfEach_SayWhatItDoesWhatIsSentAndWhatIsAnswered()
    {
        Assert.All(Listed, one =>
        {
            foreach (var element in (string[])["summary", "remarks", "request", "response[@code='200']"])
                Assert.True(DocComments.Of(one.DeclaredIn, element) is { Length: > 0 }, $"{one.DeclaredIn.Name} has no {element}.");
        });
    }

    [Fact]
    public void Routes_OfEach_AreTheQuestionAndItsBatch()
    {
        var routes = host
            .Services.GetRequiredService<EndpointDataSource>()
            .Endpoints.OfType<RouteEndpoint>()
            .ToLookup(route => route.Metadata.GetMetadata<IEndpointNameMetadata>()?.EndpointName, StringComparer.Ordinal);

        Assert.All(Listed, one =>
        {
            Assert.Equal($"/v1/calculations/{one.Name}", Assert.Single(routes[one.OperationId]).RoutePattern.RawText);
            Assert.Equal($"/v1/calculations/{one.Name}/batch", Assert.Single(routes[one.OperationId + "Batch"]).RoutePattern.RawText);
            Assert.Equal(one.RequestType, routes[one.OperationId].Single().Metadata.GetRequiredMetadata<IAcceptsMetadata>().RequestType);
        });
    }

    private static IEnumerable<string> Names(IEnumerable<Calculation> calculations) =>
        calculations.Select(one => one.Name).Order(StringComparer.Ordinal);
}
