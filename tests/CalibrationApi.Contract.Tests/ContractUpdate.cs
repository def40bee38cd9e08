using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Hosting.OpenApi;
using CalibrationApi.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract.Tests;

/// <summary>Rewrites the committed contract and the answers that it shows, when the environment asks for it.</summary>
internal static class ContractUpdate
{
    public const string Switch = "CALIBRATION_UPDATE_CONTRACT";

    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static bool IsAsked => Environment.GetEnvironmentVariable(Switch) == "1";

    /// <summary>What to do when a committed file differs.</summary>
    public static string Advice =>
        $"If the change is meant, run {Switch}=1 dotnet test tests/CalibrationApi.Contract.Tests and read the difference (git diff openapi).";

    public static string CommittedContract { get; } = Repository.PathOf("openapi", "v1.json");

    /// <summary>The problems that the contract shows.</summary>
    public static string Problems { get; } = Repository.PathOf("openapi", "examples", "problems.json");

    /// <summary>Rewrites both and returns the new contract.</summary>
    public static async Task<string> RunAsync()
    {
        await using (var service = await new Service().LoadAsync())
            await RewriteAnswersAsync(service.CreateClient());
        var problems = await ProblemCalls.MakeAsync();
        await File.WriteAllTextAsync(Problems, problems.ToJsonString(Readable) + "\n");
        // The running build still holds the old answers; the new ones are read from their files.
        await using var renewed = new Service(services =>
            services.Configure<SwaggerGenOptions>(options => options.DocumentFilter<AnswersOnDisk>())
        );
        var contract = await renewed.CreateClient().GetStringAsync(new Uri(ServedContract.Address, UriKind.Relative));
        await File.WriteAllTextAsync(CommittedContract, contract);
        return contract;
    }

    private static async Task RewriteAnswersAsync(HttpClient client)
    {
        var document = ContractDocument.Parse(await client.GetStringAsync(new Uri(ServedContract.Address, UriKind.Relative)));
        foreach (var operation in ExampleCalls.InOrder(document).Where(operation => operation.AnswerSchema is not null))
        {
            using var response = await client.SendAsync(ExampleCalls.For(operation));
            var text = await response.Content.ReadAsStringAsync();
            Assert.True(response.IsSuccessStatusCode, $"The example of {operation.OperationId} is refused: {text}");
            var answer = JsonNode.Parse(text)!;
            // Last digits that differ from one processor to another are no change.
            if (operation.AnswerExample is not { } shown || JsonDifference.First(shown, answer) is not null)
                await File.WriteAllTextAsync(AnswerFile(operation.OperationId), answer.ToJsonString(Readable) + "\n");
        }
    }

    private static string AnswerFile(string operationId) => Repository.PathOf("openapi", "examples", $"{operationId}.answer.json");

    private sealed class AnswersOnDisk : IDocumentFilter
    {
        public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
        {
            RenewProblems(swaggerDoc);
            foreach (var operation in swaggerDoc.Paths.Values.SelectMany(path => path.Operations!.Values))
            {
                var file = AnswerFile(operation.OperationId!);
                foreach (
                    var success in operation.Responses!.Where(response => response.Key.StartsWith('2')).Select(response => response.Value)
                )
                {
                    if (
                        File.Exists(file)
                        && success.Content is { } content
                        && content.TryGetValue("application/json", out var shown)
                        && shown is OpenApiMediaType media
                    )
                        media.Example = Fitting(JsonNode.Parse(File.ReadAllText(file))!, media.Schema, swaggerDoc);
                }
            }
        }

        // As the service does: a repeated request is answered without what was shown once.
        private static JsonNode Fitting(JsonNode answer, IOpenApiSchema? schema, OpenApiDocument document) =>
            answer is JsonObject one
            && schema is OpenApiSchemaReference { Reference.Id: { } name }
            && document.Components!.Schemas![name].Properties is { Count: > 0 } members
                ? new JsonObject(
                    one.Where(member => members.ContainsKey(member.Key))
                        .Select(member => new KeyValuePair<string, JsonNode?>(member.Key, member.Value?.DeepClone()))
                )
                : answer;

        // The shared ones stand in the components, the others at their operations; each keeps the names it shows.
        private static void RenewProblems(OpenApiDocument document)
        {
            var problems = JsonNode.Parse(File.ReadAllText(Problems))!.AsObject();
            var takingABody = document
                .Paths.Values.SelectMany(path => path.Operations!.Values)
                .SelectMany(operation =>
                    operation.Responses!.Select(response => (response.Key, response.Value, TakesBody: operation.RequestBody is not null))
                );
            var renewed = new HashSet<OpenApiMediaType>();
            foreach (var (status, response, takesBody) in takingABody.OrderByDescending(one => one.TakesBody))
            {
                var target = response is OpenApiResponseReference { Reference.Id: { } name }
                    ? document.Components!.Responses![name]
                    : response;
                if (
                    problems[status] is JsonObject shown
                    && target.Content?.Values.First() is OpenApiMediaType { Example: null } media
                    && renewed.Add(media)
                )
                    media.Examples = ProblemExamples.Of(shown, takesBody);
            }
        }
    }
}
