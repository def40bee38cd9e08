using CalibrationApi.Testing;

namespace CalibrationApi.Tests;

/// <summary>What a person meets who starts the service by hand.</summary>
public sealed class ProgramTests
{
    [Theory]
    [InlineData("http://0.0.0.0:0")]
    [InlineData("http://*:0")]
    public async Task Start_OnAnAddressThatOthersReach_EndsWithASentence(string address)
    {
        await using var service = ServiceProcess.Start("--urls", address);

        var (exitCode, errors) = await service.EndAsync();

        Assert.NotEqual(0, exitCode);
        Assert.StartsWith($"Refusing to start: '{address}'", errors, StringComparison.Ordinal);
        Assert.Equal(errors.TrimEnd(), Assert.Single(errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)));
    }

    [Fact]
    public async Task Start_OnAnAddressThatIsTaken_EndsWithASentence()
    {
        await using var first = ServiceProcess.Start("--urls", "http://127.0.0.1:0");
        var taken = (await first.ListeningAsync()).GetLeftPart(UriPartial.Authority);
        await using var second = ServiceProcess.Start("--urls", taken);

        var (exitCode, errors) = await second.EndAsync();

        Assert.NotEqual(0, exitCode);
        Assert.StartsWith("Refusing to start: something else listens there already.", errors, StringComparison.Ordinal);
        Assert.Contains(taken, errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Start_OnALoopbackAddress_Answers()
    {
        await using var service = ServiceProcess.Start("--urls", "http://127.0.0.1:0");
        using var client = CheckedClient.Of(await service.ListeningAsync());

        using var live = await client.GetAsync(new Uri("/healthz/live", UriKind.Relative));
        using var ready = await client.GetAsync(new Uri("/healthz/ready", UriKind.Relative));
        using var answer = await Question.Of(Question.CatchTest).AskAsync(client);

        Assert.True(live.IsSuccessStatusCode);
        Assert.True(ready.IsSuccessStatusCode);
        Assert.Equal("adopt", (await Answer.ReadAsync(answer)).Word("/verdict"));
        Assert.False(answer.Headers.Contains("Server"));
    }
}
