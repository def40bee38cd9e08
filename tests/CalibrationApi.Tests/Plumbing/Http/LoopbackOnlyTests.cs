using CalibrationApi.Plumbing.Http;
using Microsoft.Extensions.Configuration;

namespace CalibrationApi.Tests.Plumbing.Http;

public sealed class LoopbackOnlyTests
{
    [Theory]
    [InlineData("urls", "http://0.0.0.0:5000")]
    [InlineData("urls", "http://*:5000")]
    [InlineData("urls", "http://+:5000")]
    [InlineData("urls", "http://[::]:5000")]
    [InlineData("urls", "http://0:5000")]
    [InlineData("urls", "http://192.168.1.20:5000")]
    [InlineData("urls", "http://10.0.0.5")]
    [InlineData("urls", "https://169.254.10.1:5001")]
    [InlineData("urls", "http://[fe80::1]:5000")]
    [InlineData("urls", "http://tractor.local:5000")]
    [InlineData("urls", "http://localhost.example.org:5000")]
    [InlineData("urls", "http://127.0.0.1.example.org:5000")]
    [InlineData("urls", "http://%6cocalhost:5000")]
    [InlineData("urls", "http://someone@localhost:5000")]
    [InlineData("urls", "http://localhost:5000;http://0.0.0.0:5001")]
    [InlineData("urls", "http://localhost:5000; http://*:5001")]
    [InlineData("urls", "http://unix:/tmp/calibration.sock")]
    [InlineData("urls", "localhost:5000")]
    [InlineData("urls", "5000")]
    [InlineData("http_ports", "8080")]
    [InlineData("https_ports", "8443")]
    [InlineData("Kestrel:Endpoints:Lan:Url", "http://0.0.0.0:5000")]
    [InlineData("Kestrel:Endpoints:Lan:Url", "http://*:5000")]
    public void Refusal_AddressThatOthersReach_NamesItAndSaysWhatToDo(string setting, string value)
    {
        var refusal = LoopbackOnly.Refusal(With((setting, value)));

        Assert.NotNull(refusal);
        Assert.StartsWith("Refusing to start: '", refusal, StringComparison.Ordinal);
        Assert.Contains("http://localhost:5000", refusal, StringComparison.Ordinal);
        Assert.EndsWith(".", refusal, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("urls", "http://localhost:5000")]
    [InlineData("urls", "http://LOCALHOST:5000")]
    [InlineData("urls", "http://127.0.0.1:5000")]
    [InlineData("urls", "http://127.0.0.1:0")]
    [InlineData("urls", "http://127.1.2.3:5000")]
    [InlineData("urls", "http://[::1]:5000")]
    [InlineData("urls", "https://localhost:5001;http://localhost:5000")]
    [InlineData("urls", "")]
    [InlineData("Kestrel:Endpoints:Here:Url", "http://127.0.0.1:5000")]
    [InlineData("unrelated", "http://0.0.0.0:5000")]
    public void Refusal_LoopbackAddress_IsNone(string setting, string value)
    {
        Assert.Null(LoopbackOnly.Refusal(With((setting, value))));
    }

    [Fact]
    public void Refusal_NothingConfigured_IsNone()
    {
        Assert.Null(LoopbackOnly.Refusal(With()));
    }

    [Fact]
    public void Refusal_OneOpenEndpointAmongLoopbackOnes_NamesTheOpenOne()
    {
        var refusal = LoopbackOnly.Refusal(
            With(
                ("urls", "http://localhost:5000"),
                ("Kestrel:Endpoints:A:Url", "http://127.0.0.1:5001"),
                ("Kestrel:Endpoints:B:Url", "http://192.168.1.20:5002")
            )
        );

        Assert.Contains("'http://192.168.1.20:5002'", refusal, StringComparison.Ordinal);
    }

    private static IConfigurationRoot With(params (string Name, string Value)[] settings) =>
        new ConfigurationBuilder()
            .AddInMemoryCollection(settings.Select(setting => KeyValuePair.Create(setting.Name, (string?)setting.Value)))
            .Build();
}
