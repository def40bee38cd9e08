using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>
/// What the pages show between <c>&lt;!-- tour --&gt;</c> marks is what the service answers: the commands are read from every page of the
/// repository, sent, and compared with the output printed below them.
/// </summary>
/// <remarks>
/// A filter behind <c>|</c> only selects, so it is not run, but for columns of a table: each JSON value shown has to be a part of the
/// answer, and each line of text one of its sentences or lines. The service holds the season of the demo data, as it does after the
/// first command.
/// </remarks>
public sealed partial class TourTests(TourTests.Demonstration demonstration) : IClassFixture<TourTests.Demonstration>
{
    private const string Mark = "tour";

    private static readonly Step[] Steps = [.. Page.All.SelectMany(StepsOf)];

    public static TheoryData<string> StepNames => [.. Steps.Select(step => step.Name)];

    [Fact]
    public void Tours_OfThePages_CallEveryKindOfRequest()
    {
        string[] called = [.. Steps.Select(step => step.Target.Split('?')[0]).Distinct()];

        Assert.Contains("/v1/units", called);
        Assert.Contains("/v1/history", called);
        Assert.Contains("/v1/scales", called);
        Assert.Contains("/v1/calculations/catch-test/batch", called);
        Assert.Contains(Steps, step => step.Target.EndsWith("?units=us", StringComparison.Ordinal));
        Assert.Contains(Steps, step => step.ExpectedStatus is not null);
        var calculations = called.Count(path => path.StartsWith("/v1/calculations/", StringComparison.Ordinal));
        Assert.True(calculations >= 14, $"Calculations are missing from the tours: there are only {calculations}.");
    }

    [Fact]
    public void Tour_OfTheReadme_HasFiveRequestsAfterTheFirst()
    {
        PageBlock[] blocks = [.. Page.At("README.md").Blocks.Where(block => block.Mark == Mark)];

        Assert.Equal([1, 5], blocks.GroupBy(block => block.Region).Select(tour => tour.Count()));
        Assert.All(blocks, block => Assert.NotEmpty(block.Output));
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
        JsonElement[] nodes =
        [
            .. response.Content.Headers.ContentType!.MediaType!.EndsWith("json", StringComparison.Ordinal)
                ? PrintedAnswer.Values(text).SelectMany(PrintedAnswer.Nodes)
                : PrintedAnswer.Lines(step.Columns is { } columns ? Cut(text, columns) : text),
        ];
        Assert.All(step.Shown, shown =>
            Assert.True(
                nodes.Any(node => PrintedAnswer.IsPart(shown, node)),
                $"{step.Page} shows{Environment.NewLine}{shown}{Environment.NewLine}but the answer is{Environment.NewLine}{text}"
            )
        );
    }

    // What `cut -d ';' -f` leaves of each line.
    private static string Cut(string text, string fields)
    {
        int[] kept =
        [
            .. fields
                .Split(',')
                .Select(part => part.Split('-'))
                .SelectMany(ends => Enumerable.Range(Number(ends[0]), Number(ends[^1]) - Number(ends[0]) + 1)),
        ];
        return string.Join('\n', text.Split("\r\n").Select(line => line.Split(';')).Select(Kept));

        string Kept(string[] cells) => string.Join(';', kept.Where(field => field <= cells.Length).Select(field => cells[field - 1]));

        static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);
    }

    private static ByteArrayContent Json(byte[] body) => Content(body, "application/json");

    private static ByteArrayContent Content(byte[] body, string mediaType) =>
        new(body) { Headers = { ContentType = new MediaTypeHeaderValue(mediaType) } };

    private static IEnumerable<Step> StepsOf(Page page) =>
        page.Blocks.Where(block => block.Mark == Mark).Select((block, i) => Step.Parse(page.Name, i + 1, block));

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
    private sealed record Step(
        string Page,
        string Name,
        string Target,
        byte[]? Body,
        string MediaType,
        string? Accept,
        string? Columns,
        JsonElement[] Shown
    )
    {
        private const string Address = "http://localhost:5000";

        /// <summary>The status printed with a problem; null when the command succeeds.</summary>
        public HttpStatusCode? ExpectedStatus =>
            Shown is [{ ValueKind: JsonValueKind.Object } first, ..] && first.TryGetProperty("status", out var status)
                ? (HttpStatusCode)status.GetInt32()
                : null;

        public static Step Parse(string page, int number, PageBlock block)
        {
            string[] words =
            [
                .. Word().Matches(block.Body).Select(match => match.Groups["word"].Value.Replace("'", "", StringComparison.Ordinal)),
            ];
            Assert.True(words[0] == "curl" && block.Kind == "bash", $"{page} has another block in its tour: {block.Body}");
            var target = Assert.Single(words, word => word.StartsWith(Address, StringComparison.Ordinal))[Address.Length..];
            return new Step(
                page,
                $"{page} {number} {target}",
                target,
                (After(words, "--json") ?? After(words, "--data-binary")) is { } data ? Payload(data) : null,
                Header(words, "Content-Type: ") ?? "application/json",
                Header(words, "Accept: "),
                Fields().Match(block.Body) is { Success: true } cut ? cut.Groups["fields"].Value : null,
                block.OutputKind == "json" ? PrintedAnswer.Values(block.Output) : [.. PrintedAnswer.Lines(block.Output)]
            );
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
            words
                .Where((word, at) => at > 0 && words[at - 1] == "-H" && word.StartsWith(name, StringComparison.Ordinal))
                .Select(word => word[name.Length..])
                .FirstOrDefault();

        private static byte[] Payload(string data) =>
            data.StartsWith('@') ? File.ReadAllBytes(Repository.PathOf(data[1..])) : Encoding.UTF8.GetBytes(data);
    }
}
