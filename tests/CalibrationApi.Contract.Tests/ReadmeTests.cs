using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>
/// What README.md shows is what the service answers: the commands of its tour are read from the file, sent, and compared
/// with the output printed below them.
/// </summary>
/// <remarks>
/// A filter behind <c>|</c> only selects, so it is not run, but for columns of a table: each JSON value shown has to be a part of the answer, and each
/// line of text one of its sentences or lines. The service holds the season of the demo data, as it does after the first command.
/// </remarks>
public sealed partial class ReadmeTests(ReadmeTests.Demonstration demonstration) : IClassFixture<ReadmeTests.Demonstration>
{
    private static readonly string Readme = File.ReadAllText(Repository.PathOf("README.md"));
    private static readonly Step[] Steps = ReadTour();

    public static TheoryData<string> StepNames => [.. Steps.Select(step => step.Name)];

    public static TheoryData<string> Guides => ["README.md", "DEVELOPERS.md"];

    [Fact]
    public void Tour_OfTheReadme_CallsEveryKindOfRequest()
    {
        string[] called = [.. Steps.Select(step => step.Target.Split('?')[0]).Distinct()];

        Assert.True(Steps.Count(step => step.Shown.Length > 0) >= 12, $"Only {Steps.Length} commands were found in the tour.");
        Assert.Contains("/v1/calculations/catch-plan", called);
        Assert.Contains("/v1/calculations/catch-test", called);
        Assert.Contains("/v1/calculations/meter-speed", called);
        Assert.Contains("/v1/units", called);
        Assert.Contains("/v1/history", called);
        Assert.Contains("/v1/scales", called);
        Assert.Contains("/v1/calculations/catch-test/batch", called);
        Assert.Contains(Steps, step => step.Target.EndsWith("?units=us", StringComparison.Ordinal));
        Assert.Contains(Steps, step => step.ExpectedStatus is not null);
    }

    [Theory]
    [MemberData(nameof(StepNames))]
    public async Task Tour_CommandAsPrinted_AnswersWhatIsPrintedBelowIt(string name)
    {
        var step = Steps.Single(one => one.Name == name);

        using var response = await demonstration.Client.SendAsync(step.Request());
        var text = await response.Content.ReadAsStringAsync();

        if (step.ExpectedStatus is { } status)
            Assert.Equal(status, response.StatusCode);
        else
            Assert.True(response.IsSuccessStatusCode, text);
        JsonElement[] nodes = [.. response.Content.Headers.ContentType!.MediaType!.EndsWith("json", StringComparison.Ordinal)
            ? PrintedAnswer.Values(text).SelectMany(PrintedAnswer.Nodes)
            : PrintedAnswer.Lines(step.Columns is { } columns ? Cut(text, columns) : text)];
        Assert.All(step.Shown, shown => Assert.True(
            nodes.Any(node => PrintedAnswer.IsPart(shown, node)),
            $"README.md shows{Environment.NewLine}{shown}{Environment.NewLine}but the answer is{Environment.NewLine}{text}"));
    }

    [Theory]
    [MemberData(nameof(Guides))]
    public void Links_ToFilesOfTheRepository_LeadSomewhere(string guide)
    {
        var targets = RelativeLink().Matches(File.ReadAllText(Repository.PathOf(guide))).Select(match => match.Groups[1].Value).ToArray();

        Assert.NotEmpty(targets);
        Assert.All(targets, target => Assert.True(Path.Exists(Repository.PathOf(target)), $"{guide} links to {target}, which does not exist."));
    }

    [Fact]
    public async Task UnitsTable_OfTheReadme_IsTheListThatTheServiceServes()
    {
        using var served = JsonDocument.Parse(await demonstration.Client.GetStringAsync(new Uri("/v1/units", UriKind.Relative)));
        var expected = served.RootElement.GetProperty("units").EnumerateArray()
            .GroupBy(unit => unit.GetProperty("dimension").GetString(), unit => unit.GetProperty("symbol").GetString())
            .Select(dimension => $"| {dimension.Key} | {string.Join(", ", dimension)} |");

        var shown = Readme.Split('\n').SkipWhile(line => line != "| what | units |").Skip(2).TakeWhile(line => line.StartsWith('|'));

        Assert.Equal(expected, shown);
    }

    // What `cut -d ';' -f` leaves of each line.
    private static string Cut(string text, string fields)
    {
        int[] kept = [.. fields.Split(',').Select(part => part.Split('-')).SelectMany(ends => Enumerable.Range(Number(ends[0]), Number(ends[^1]) - Number(ends[0]) + 1))];
        return string.Join('\n', text.Split("\r\n").Select(line => line.Split(';')).Select(cells => string.Join(';', kept.Where(field => field <= cells.Length).Select(field => cells[field - 1]))));

        static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);
    }

    private static ByteArrayContent Json(byte[] body) => Content(body, "application/json");

    private static ByteArrayContent Content(byte[] body, string mediaType) => new(body) { Headers = { ContentType = new MediaTypeHeaderValue(mediaType) } };

    private static Step[] ReadTour()
    {
        var tours = string.Concat(Readme.Split("<!-- tour -->")[1..].Select(part => part.Split("<!-- /tour -->")[0]));
        return [.. Command().Matches(tours).Select((match, i) => Step.Parse(i + 1, match))];
    }

    // A fenced bash block and, if there is one, the fenced block of its output.
    [GeneratedRegex("""```bash\n(?<command>(?:(?!```).)*)```(?:\s*```(?<kind>json|text)\n(?<output>(?:(?!```).)*)```)?""", RegexOptions.Singleline)]
    private static partial Regex Command();

    // Links to a path; those with a scheme and those within the page are not about files.
    [GeneratedRegex(@"\]\((?![a-z]+:|#)([^)#]+)")]
    private static partial Regex RelativeLink();

    // A word of a command line: quoted parts and plain parts that touch each other. A pipe ends the command.
    [GeneratedRegex("""\G\s*(?<word>(?:'[^']*'|[^\s'|])+)""")]
    private static partial Regex Word();

    // A filter that chooses columns.
    [GeneratedRegex(@"\| cut -d ';' -f (?<fields>[\d,-]+)")]
    private static partial Regex Fields();

    /// <summary>The service with the season of the demo data, sent as <c>--demo</c> sends it.</summary>
    public sealed class Demonstration : IAsyncLifetime, IDisposable
    {
        private readonly Service service = new();

        public HttpClient Client { get; private set; } = null!;

        public async Task InitializeAsync()
        {
            Client = service.CreateDefaultClient(new ContractCheckingHandler());
            using var season = JsonDocument.Parse(await File.ReadAllBytesAsync(Repository.PathOf("demo-data", "season.json")));
            foreach (var request in season.RootElement.GetProperty("requests").EnumerateArray())
            {
                using var body = Json(Encoding.UTF8.GetBytes(request.GetProperty("body").GetRawText()));
                using var response = await Client.PostAsync(new Uri(request.GetProperty("path").GetString()!, UriKind.Relative), body);
                response.EnsureSuccessStatusCode();
            }
        }

        public Task DisposeAsync() => Task.CompletedTask;

        public void Dispose() => service.Dispose();
    }

    /// <summary>One command of the tour and what is printed below it.</summary>
    private sealed record Step(string Name, string Target, byte[]? Body, string MediaType, string? Accept, string? Columns, JsonElement[] Shown)
    {
        private const string Address = "http://localhost:5000";

        /// <summary>The status printed with a problem; null when the command succeeds.</summary>
        public HttpStatusCode? ExpectedStatus =>
            Shown is [{ ValueKind: JsonValueKind.Object } first, ..] && first.TryGetProperty("status", out var status) ? (HttpStatusCode)status.GetInt32() : null;

        public static Step Parse(int number, Match block)
        {
            string[] words = [.. Word().Matches(block.Groups["command"].Value).Select(match => match.Groups["word"].Value.Replace("'", "", StringComparison.Ordinal))];
            Assert.Equal("curl", words[0]);
            var target = Assert.Single(words, word => word.StartsWith(Address, StringComparison.Ordinal))[Address.Length..];
            var output = block.Groups["output"].Value;
            return new Step(
                $"{number} {target}",
                target,
                (After(words, "--json") ?? After(words, "--data-binary")) is { } data ? Payload(data) : null,
                Header(words, "Content-Type: ") ?? "application/json",
                Header(words, "Accept: "),
                Fields().Match(block.Groups["command"].Value) is { Success: true } cut ? cut.Groups["fields"].Value : null,
                block.Groups["kind"].Value == "json" ? PrintedAnswer.Values(output) : [.. PrintedAnswer.Lines(output)]);
        }

        public HttpRequestMessage Request()
        {
            var request = new HttpRequestMessage(Body is null ? HttpMethod.Get : HttpMethod.Post, Target);
            if (Body is not null)
                request.Content = Content(Body, MediaType);
            if (Accept is not null)
                request.Headers.Add("Accept", Accept);
            return request;
        }

        private static string? After(string[] words, string option) =>
            Array.IndexOf(words, option) is >= 0 and var at ? words[at + 1] : null;

        private static string? Header(string[] words, string name) =>
            words.Where((word, at) => at > 0 && words[at - 1] == "-H" && word.StartsWith(name, StringComparison.Ordinal)).Select(word => word[name.Length..]).FirstOrDefault();

        private static byte[] Payload(string data) =>
            data.StartsWith('@') ? File.ReadAllBytes(Repository.PathOf(data[1..])) : Encoding.UTF8.GetBytes(data);
    }
}
