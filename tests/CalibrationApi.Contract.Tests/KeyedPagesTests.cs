using System.Net;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The blocks of pages that make and use a key do so.</summary>
public sealed partial class KeyedPagesTests
{
    private const string Mark = "keyed";

    public static TheoryData<string> Pages =>
        [.. Page.All.Where(page => page.Blocks.Any(block => block.Mark == Mark)).Select(page => page.Name)];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Blocks_InOrder_MakeAKeyThatOpensWhatIsClosedFromThenOn(string page)
    {
        PageBlock[] blocks = [.. Page.At(page).Blocks.Where(block => block.Mark == Mark)];
        var service = new RunningService();
        await service.InitializeAsync();
        using var client = CheckedClient.Of(new Uri(service.Address));

        var command = MakesAKey().Match(blocks[0].Body);
        Assert.True(command.Success, $"{page} begins with another command than one that makes a key.");
        var key = await service.CommandAsync(command.Groups["arguments"].Value.Split(' '));
        foreach (var asked in blocks[1..].Select(block => AsksWithAKey().Match(block.Body)))
        {
            Assert.True(asked.Success, $"{page} shows a key in another way than as a header of curl.");
            using var request = new HttpRequestMessage(HttpMethod.Get, asked.Groups["path"].Value);
            var value = asked.Groups["value"].Value.Replace("$KEY", key, StringComparison.Ordinal);
            request.Headers.TryAddWithoutValidation(asked.Groups["name"].Value, value);
            using var answer = await client.SendAsync(request);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }

        using var without = await client.GetAsync(new Uri("/v1/machines", UriKind.Relative));
        Assert.Equal(HttpStatusCode.Unauthorized, without.StatusCode);
        await service.DisposeAsync();
    }

    [GeneratedRegex(@"\Adotnet run --project src/CalibrationApi -- (?<arguments>keys create [^\n]+)\n\z")]
    private static partial Regex MakesAKey();

    [GeneratedRegex("""\Acurl -H "(?<name>[^:]+): (?<value>[^"]+)" http://localhost:5000(?<path>\S+)\n\z""")]
    private static partial Regex AsksWithAKey();
}
