using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract.Tests;

/// <summary>Rewrites the committed contract and the answers that it shows, when the environment asks for it.</summary>
internal static class ContractUpdate
{
    public const string Switch = "CALIBRATION_UPDATE_CONTRACT";

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static bool IsAsked => Environment.GetEnvironmentVariable(Switch) == "1";

    /// <summary>What to do when a committed file differs.</summary>
    public static string Advice => $"If the change is meant, run {Switch}=1 dotnet test tests/CalibrationApi.Contract.Tests and read the difference (git diff openapi src/CalibrationApi/Contract/Examples).";

    public static string CommittedContract { get; } = Repository.PathOf("openapi", "v1.json");

    /// <summary>Rewrites both and returns the new contract.</summary>
    public static async Task<string> RunAsync()
    {
        await using (var service = await new Service().LoadAsync())
            await RewriteAnswersAsync(service.CreateClient());
        // The running build still holds the old answers; the new ones are read from their files.
        await using var renewed = new Service(services => services.Configure<SwaggerGenOptions>(options => options.DocumentFilter<AnswersOnDisk>()));
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

    private static string AnswerFile(string operationId) => Repository.PathOf("src", "CalibrationApi", "Contract", "Examples", $"{operationId}.answer.json");

    private sealed class AnswersOnDisk : IDocumentFilter
    {
        public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
        {
            foreach (var operation in swaggerDoc.Paths.Values.SelectMany(path => path.Operations!.Values))
            {
                var file = AnswerFile(operation.OperationId!);
                var success = operation.Responses!.First(response => response.Key.StartsWith('2')).Value;
                if (File.Exists(file) && success.Content is { } content && content.TryGetValue("application/json", out var shown) && shown is OpenApiMediaType media)
                    media.Example = JsonNode.Parse(File.ReadAllText(file));
            }
        }
    }
}
