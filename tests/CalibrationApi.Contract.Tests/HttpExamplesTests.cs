using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The requests in http-examples run against the service as a process, meet what they expect, and cover the contract.</summary>
public sealed partial class HttpExamplesTests(RunningService service, KeyedService keyed)
    : IClassFixture<RunningService>,
        IClassFixture<KeyedService>
{
    private static readonly string Folder = Repository.PathOf("http-examples");

    public static TheoryData<string> Files => [.. FilesOf("."), .. FilesOf(KeyedService.Folder)];

    public static TheoryData<string> OperationIds => ServedContract.OperationIds;

    [Theory]
    [MemberData(nameof(Files))]
    public async Task Requests_OfEachFile_MeetWhatTheyExpect(string file)
    {
        using var copy = file.StartsWith(KeyedService.Folder, StringComparison.Ordinal)
            ? new CopyOfExamples(file, keyed.Address, keyed.Key)
            : new CopyOfExamples(file, service.Address);

        // Without the bodies: the tool ends before a pipe has taken more than 64 KiB of its report.
        var run = await NodeTools.RunAtAsync(copy.Folder, "httpyac", "send", file, "--all", "--json", "--output", "none");

        Assert.True(run.ExitCode == 0, $"{file}: {Faults(run)}");
        var requests = JsonNode.Parse(run.Output)!["requests"]!.AsArray();
        Assert.NotEmpty(requests);
        Assert.All(requests, request =>
            Assert.True(
                request!["summary"]!["successTests"]!.GetValue<int>() > 0,
                $"{file}: the request '{request["name"]}' expects nothing, so nothing shows whether it works."
            )
        );
    }

    [Fact]
    public async Task Request_ThatDoesNotMeetWhatItExpects_FailsTheRun()
    {
        using var copy = new CopyOfExamples("units.http", service.Address);
        copy.Replace("=== 200", "=== 299");

        var run = await NodeTools.RunAtAsync(copy.Folder, "httpyac", "send", "units.http", "--all", "--json", "--output", "none");

        Assert.NotEqual(0, run.ExitCode);
        Assert.Contains("FAILED", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(OperationIds))]
    public void Operations_OfTheContract_EachHaveARequest(string operationId)
    {
        var requested = Directory
            .GetFiles(Folder, "*.http", SearchOption.AllDirectories)
            .SelectMany(file => RequestLine().Matches(File.ReadAllText(file)))
            // A variable in a path stands for one segment.
            .Select(line => (Method: line.Groups["method"].Value, Path: Variable().Replace(line.Groups["path"].Value, "1")))
            .SelectMany(line => ContractDocument.Committed.At(line.Path).Where(operation => operation.Method == line.Method))
            .Select(operation => operation.OperationId);

        Assert.Contains(operationId, requested);
    }

    private static IEnumerable<string> FilesOf(string folder) =>
        Directory
            .GetFiles(Path.Combine(Folder, folder), "*.http")
            .Select(path => Path.GetRelativePath(Folder, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);

    private static string Faults(Command run)
    {
        try
        {
            var tests = JsonNode.Parse(run.Output)!["requests"]!
                .AsArray()
                .SelectMany(request => (request!["testResults"]?.AsArray() ?? []).Select(test => (Request: request["name"], Test: test!)))
                .Where(test => test.Test["status"]?.GetValue<string>() != "SUCCESS")
                .Select(test => $"{test.Request}: {test.Test["message"]}: {test.Test["error"]?["displayMessage"]}");
            return string.Join(Environment.NewLine, tests);
        }
        catch (System.Text.Json.JsonException)
        {
            return run.Everything;
        }
    }

    [GeneratedRegex(@"^(?<method>GET|POST|PUT|DELETE|PATCH) \{\{host\}\}(?<path>/[^?\s]*)", RegexOptions.Multiline)]
    private static partial Regex RequestLine();

    [GeneratedRegex(@"\{\{[^}]+\}\}")]
    private static partial Regex Variable();

    /// <summary>A file of http-examples that asks another address, with the demo data beside it as in the repository.</summary>
    private sealed partial class CopyOfExamples : IDisposable
    {
        private readonly DirectoryInfo top = Directory.CreateTempSubdirectory("calibration-http-");
        private readonly string path;

        public CopyOfExamples(string file, string address, string? key = null)
        {
            Folder = top.CreateSubdirectory("http-examples").FullName;
            path = Path.Combine(Folder, file);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var text = File.ReadAllText(Path.Combine(HttpExamplesTests.Folder, file));
            Assert.Matches(Host(), text);
            Assert.Equal(key is not null, Key().IsMatch(text));
            File.WriteAllText(path, Key().Replace(Host().Replace(text, $"@host = {address}"), $"@key = {key}"));
            var demo = top.CreateSubdirectory("demo-data").FullName;
            foreach (var data in Directory.GetFiles(Repository.PathOf("demo-data")))
                File.Copy(data, Path.Combine(demo, Path.GetFileName(data)));
        }

        public string Folder { get; }

        public void Replace(string old, string with)
        {
            var text = File.ReadAllText(path);
            Assert.Contains(old, text, StringComparison.Ordinal);
            File.WriteAllText(path, text.Replace(old, with, StringComparison.Ordinal));
        }

        public void Dispose() => top.Delete(recursive: true);

        [GeneratedRegex("^@host = .*$", RegexOptions.Multiline)]
        private static partial Regex Host();

        [GeneratedRegex("^@key = .*$", RegexOptions.Multiline)]
        private static partial Regex Key();
    }
}
