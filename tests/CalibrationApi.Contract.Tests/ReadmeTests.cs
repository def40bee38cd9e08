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
/// A filter behind <c>|</c> only selects, so it is not run: each JSON value shown has to be a part of the answer, and each
/// line of text one of its sentences.
/// </remarks>
public sealed partial class ReadmeTests
{
    // The last digits may differ from one processor family to another.
    private const double SameNumber = 1e-9;

    private static readonly string Readme = File.ReadAllText(Repository.PathOf("README.md"));
    private static readonly Step[] Steps = ReadTour();

    public static TheoryData<string> StepNames => [.. Steps.Select(step => step.Name)];

    public static TheoryData<string> Guides => ["README.md", "DEVELOPERS.md"];

    [Fact]
    public void Tour_OfTheReadme_CallsEveryKindOfRequest()
    {
        string[] called = [.. Steps.Select(step => step.Target.Split('?')[0]).Distinct()];

        Assert.True(Steps.Length >= 9, $"Only {Steps.Length} commands were found in the tour.");
        Assert.Contains("/v1/calculations/catch-plan", called);
        Assert.Contains("/v1/calculations/catch-test", called);
        Assert.Contains("/v1/calculations/meter-speed", called);
        Assert.Contains("/v1/units", called);
        Assert.Contains(Steps, step => step.Target.EndsWith("?units=us", StringComparison.Ordinal));
        Assert.Contains(Steps, step => step.ExpectedStatus != HttpStatusCode.OK);
    }

    [Theory]
    [MemberData(nameof(StepNames))]
    public async Task Tour_CommandAsPrinted_AnswersWhatIsPrintedBelowIt(string name)
    {
        var step = Steps.Single(one => one.Name == name);
        var client = (await ServedContract.GetAsync()).Client;
        using var request = new HttpRequestMessage(step.Body is null ? HttpMethod.Get : HttpMethod.Post, step.Target);
        if (step.Body is not null)
            request.Content = new ByteArrayContent(step.Body) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };

        using var response = await client.SendAsync(request);
        var text = await response.Content.ReadAsStringAsync();
        using var answer = JsonDocument.Parse(text);

        Assert.Equal(step.ExpectedStatus, response.StatusCode);
        Assert.All(step.Shown, shown => Assert.True(
            Nodes(answer.RootElement).Any(node => IsPart(shown, node)),
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
        var client = (await ServedContract.GetAsync()).Client;
        using var served = JsonDocument.Parse(await client.GetStringAsync(new Uri("/v1/units", UriKind.Relative)));
        var expected = served.RootElement.GetProperty("units").EnumerateArray()
            .GroupBy(unit => unit.GetProperty("dimension").GetString(), unit => unit.GetProperty("symbol").GetString())
            .Select(dimension => $"| {dimension.Key} | {string.Join(", ", dimension)} |");

        var shown = Readme.Split('\n').SkipWhile(line => line != "| what | units |").Skip(2).TakeWhile(line => line.StartsWith('|'));

        Assert.Equal(expected, shown);
    }

    private static IEnumerable<JsonElement> Nodes(JsonElement node)
    {
        yield return node;
        var children = node.ValueKind switch
        {
            JsonValueKind.Object => node.EnumerateObject().Select(member => member.Value),
            JsonValueKind.Array => node.EnumerateArray(),
            _ => [],
        };
        foreach (var below in children.SelectMany(Nodes))
            yield return below;
    }

    // An object shown may leave members out; everything else is shown whole.
    private static bool IsPart(JsonElement shown, JsonElement answered) => shown.ValueKind == answered.ValueKind && shown.ValueKind switch
    {
        JsonValueKind.Object => shown.EnumerateObject().All(member => answered.TryGetProperty(member.Name, out var value) && IsPart(member.Value, value)),
        JsonValueKind.Array => shown.GetArrayLength() == answered.GetArrayLength()
            && shown.EnumerateArray().Zip(answered.EnumerateArray()).All(pair => IsPart(pair.First, pair.Second)),
        JsonValueKind.Number => Math.Abs(shown.GetDouble() - answered.GetDouble()) <= SameNumber * Math.Abs(answered.GetDouble()),
        JsonValueKind.String => shown.GetString() == answered.GetString(),
        _ => true,
    };

    private static Step[] ReadTour()
    {
        var tour = Readme.Split("<!-- tour -->")[1].Split("<!-- /tour -->")[0];
        return [.. Command().Matches(tour).Select((match, i) => Step.Parse(i + 1, match.Groups["command"].Value, match.Groups["kind"].Value, match.Groups["output"].Value))];
    }

    // A fenced bash block and the fenced block of its output.
    [GeneratedRegex("""```bash\n(?<command>.*?)```\s*```(?<kind>json|text)\n(?<output>.*?)```""", RegexOptions.Singleline)]
    private static partial Regex Command();

    // Links to a path; those with a scheme and those within the page are not about files.
    [GeneratedRegex(@"\]\((?![a-z]+:|#)([^)#]+)")]
    private static partial Regex RelativeLink();

    // A word of a command line: quoted parts and plain parts that touch each other.
    [GeneratedRegex("""\G\s*(?<word>(?:'[^']*'|[^\s'|])+|\|)""")]
    private static partial Regex Word();

    /// <summary>One command of the tour and what is printed below it.</summary>
    private sealed record Step(string Name, string Target, byte[]? Body, JsonElement[] Shown)
    {
        private const string Address = "http://localhost:5000";

        /// <summary>The status printed with a problem; otherwise the command succeeds.</summary>
        public HttpStatusCode ExpectedStatus =>
            Shown[0].ValueKind == JsonValueKind.Object && Shown[0].TryGetProperty("status", out var status) ? (HttpStatusCode)status.GetInt32() : HttpStatusCode.OK;

        public static Step Parse(int number, string command, string kind, string output)
        {
            string[] words = [.. Word().Matches(command).Select(match => match.Groups["word"].Value.Replace("'", "", StringComparison.Ordinal)).TakeWhile(word => word != "|")];
            var url = Assert.Single(words, word => word.StartsWith(Address, StringComparison.Ordinal));
            Assert.Equal("curl", words[0]);
            var data = Array.IndexOf(words, "--json");
            var target = url[Address.Length..];
            return new Step($"{number} {target}", target, data < 0 ? null : Payload(words[data + 1]), kind == "json" ? Values(output) : [.. Lines(output)]);
        }

        private static byte[] Payload(string data) =>
            data.StartsWith('@') ? File.ReadAllBytes(Repository.PathOf(data[1..])) : Encoding.UTF8.GetBytes(data);

        private static IEnumerable<JsonElement> Lines(string output) =>
            output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonSerializer.SerializeToElement(line));

        private static JsonElement[] Values(string output)
        {
            var values = new List<JsonElement>();
            var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(output), new JsonReaderOptions { AllowMultipleValues = true });
            while (reader.Read())
                values.Add(JsonElement.ParseValue(ref reader));
            return [.. values];
        }
    }
}
