using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalibrationApi.Storage;
using CalibrationApi.Testing;
using CalibrationApi.Tests.Plumbing.Access;
using Microsoft.AspNetCore.Routing;

namespace CalibrationApi.Tests.Security;

/// <summary>
/// What the service shows of itself, and what it can reach. Items 7, 8 and 9 of the OWASP API Security Top 10, edition 2023
/// (owasp.org/API-Security, CC BY-SA 4.0), one concrete test or more for each.
/// </summary>
public sealed partial class OwaspSurfaceTests(TwoFarms farms) : IClassFixture<TwoFarms>
{
    private static readonly string[] WaysOut =
    [
        "HttpClient",
        "HttpMessageInvoker",
        "SocketsHttpHandler",
        "WebRequest",
        "HttpWebRequest",
        "WebClient",
        "FtpWebRequest",
        "TcpClient",
        "UdpClient",
        "Socket",
        "Dns",
        "Ping",
        "SmtpClient",
        "ClientWebSocket",
        "Process",
    ];

    private const string OfTheDemo = "HttpClient";

    private static readonly string[] WordsForAddresses = ["url", "uri", "href", "callback", "webhook", "endpoint", "proxy", "host"];

    private static readonly string[] OutsideTheContract = ["/healthz/", "/openapi/", "/reference/"];

    // The service fetches nothing that a caller names: there is no code that could, and no member that could name it.
    [Fact]
    public void API7_Service_HasNoWayToAskAnotherServer()
    {
        foreach (
            var assembly in new[]
            {
                typeof(Program).Assembly,
                typeof(CalibrationDatabase).Assembly,
                typeof(Engine.Answers.Refusal).Assembly,
            }
        )
        {
            using var file = new PEReader(File.OpenRead(assembly.Location));
            var reader = file.GetMetadataReader();
            var used = reader.TypeReferences.Select(handle => reader.GetString(reader.GetTypeReference(handle).Name)).ToHashSet();

            Assert.Contains("Object", used);
            Assert.Empty(used.Intersect(WaysOut).Except([OfTheDemo]));
        }

        // What loads the demonstration at a start with --demo asks the service itself, at its own address; no request gets there.
        var sources = Directory
            .EnumerateFiles(Repository.PathOf("src", "CalibrationApi"), "*.cs", SearchOption.AllDirectories)
            .Where(file =>
                !Path.GetRelativePath(Repository.Root, file).Split(Path.DirectorySeparatorChar).Intersect(["Demo", "obj", "bin"]).Any()
            )
            .ToArray();
        Assert.True(sources.Length > 100);
        Assert.All(sources, file => Assert.DoesNotContain(OfTheDemo, File.ReadAllText(file), StringComparison.Ordinal));
    }

    [Fact]
    public void API7_Contract_TakesNoAddressFromACaller()
    {
        var contract = ContractDocument.Committed;
        var members = contract
            .Operations.SelectMany(operation =>
                (operation.RequestSchema is null ? [] : Members(contract, operation.RequestSchema, "", [])).Concat(
                    (operation.Json["parameters"]?.AsArray() ?? [])
                        .Select(parameter => contract.Resolve(parameter!))
                        .Select(parameter => (Name: parameter["name"]!.GetValue<string>(), Schema: contract.Resolve(parameter["schema"]!)))
                )
            )
            .ToArray();

        Assert.True(members.Length > 200);
        Assert.DoesNotContain(members, member =>
            member.Schema["format"]?.GetValue<string>() is "uri" or "url" or "iri" or "uri-reference" or "hostname" or "ipv4" or "ipv6"
        );
        Assert.DoesNotContain(members, member =>
            Humps().Split(member.Name).Any(word => WordsForAddresses.Contains(word, StringComparer.OrdinalIgnoreCase))
        );
    }

    [Fact]
    public async Task API8_Production_ShowsNothingOfItselfAndOpensNothingToOtherPages()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/units");
        request.Headers.Add("Origin", "https://evil.example");

        var reply = await farms.Service.SendAsync(request);

        Assert.Equal(200, reply.Status);
        Assert.Equal("nosniff", reply.Header("X-Content-Type-Options"));
        Assert.All(
            (string[])["Server", "X-Powered-By", "X-AspNet-Version", "Access-Control-Allow-Origin", "Access-Control-Allow-Credentials"],
            name => Assert.Null(reply.Header(name))
        );
        foreach (
            var path in (string[])
                [
                    "/swagger",
                    "/swagger/v1/swagger.json",
                    "/.git/config",
                    "/appsettings.json",
                    "/calibration.db",
                    "/reference/..%2f..%2fappsettings.json",
                    "/debug",
                    "/metrics",
                ]
        )
            Assert.Equal(404, (await farms.AskAsync(HttpMethod.Get, path, null)).Status);
    }

    [Theory]
    [InlineData("{\"name\":")]
    [InlineData("{\"name\":{\"$type\":\"System.Object\"}}")]
    [InlineData("{\"name\":\"\\ud800\"}")]
    [InlineData("[1]")]
    public async Task API8_RefusedBody_TellsNothingOfTheInside(string body)
    {
        var reply = await farms.AskAsync(HttpMethod.Post, "/v1/machines", farms.North.Full.Text, body);

        Assert.Equal(400, reply.Status);
        Assert.DoesNotMatch(
            @"CalibrationApi\.|System\.|Microsoft|SQLite|\.cs\b|   at |Exception",
            reply.Text.Replace("System.Object", "", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void API9_RouteTable_IsTheContractAndNothingElse()
    {
        var routes = farms.Service.Service<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().ToArray();
        var versioned = routes
            .Where(route => route.RoutePattern.RawText!.StartsWith("/v", StringComparison.Ordinal))
            .SelectMany(route =>
                route
                    .Metadata.GetRequiredMetadata<IHttpMethodMetadata>()
                    .HttpMethods.Select(method => $"{method} {route.RoutePattern.RawText!.TrimEnd('/')}")
            );

        Assert.Equal(
            ContractDocument.Committed.Operations.Select(operation => $"{operation.Method} {operation.Path}").Order(StringComparer.Ordinal),
            versioned.Order(StringComparer.Ordinal)
        );
        var others = routes
            .Select(route => "/" + route.RoutePattern.RawText!.TrimStart('/'))
            .Where(path => path != "/" && !path.StartsWith("/v1/", StringComparison.Ordinal));
        Assert.All(others, path =>
            Assert.Contains(OutsideTheContract, known => path.StartsWith(known.TrimEnd('/'), StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData("/v0/units")]
    [InlineData("/v2/units")]
    [InlineData("/units")]
    [InlineData("/api/v1/units")]
    [InlineData("/v1/")]
    [InlineData("/v1/admin")]
    [InlineData("/v1/units/")]
    public async Task API9_AddressThatNobodyPublished_IsNotThere(string path)
    {
        Assert.Equal(404, (await farms.AskAsync(HttpMethod.Get, path, farms.North.Full.Text)).Status);
    }

    [GeneratedRegex("(?=[A-Z])|-")]
    private static partial Regex Humps();

    private static IEnumerable<(string Name, JsonObject Schema)> Members(
        ContractDocument contract,
        JsonNode schema,
        string name,
        HashSet<JsonObject> seen
    )
    {
        var here = contract.Resolve(schema);
        if (!seen.Add(here))
            return [];
        var below = (here["properties"]?.AsObject() ?? []).SelectMany(member => Members(contract, member.Value!, member.Key, [.. seen]));
        return below.Concat(here["items"] is { } items ? Members(contract, items, name, [.. seen]) : []).Prepend((name, here));
    }
}
