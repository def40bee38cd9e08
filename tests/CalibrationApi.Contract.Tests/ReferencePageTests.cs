using System.Text.Json;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The reference page as a browser without a network shows it, on a desk and on a phone.</summary>
public sealed class ReferencePageTests(ReferencePageTests.ShownPage page) : IClassFixture<ReferencePageTests.ShownPage>
{
    [ChromiumFact]
    public void Page_WithTheNetworkBlocked_AsksNoOtherMachineAndReportsNoError()
    {
        Assert.Empty(page.Seen.Outside);
        Assert.Empty(page.Seen.Errors);
    }

    [ChromiumFact]
    public void Page_Opened_ListsEveryOperationOfTheContract() =>
        Assert.Equal(
            ContractDocument.Committed.Operations.Select(operation => operation.OperationId).Order(StringComparer.Ordinal),
            page.Seen.Operations.Order(StringComparer.Ordinal)
        );

    [ChromiumFact]
    public void Operation_TriedOutWithItsExample_IsSentToThisServiceAndAnswered()
    {
        Assert.StartsWith($"{page.Address}/v1/calculations/catch-test", page.Seen.Asked, StringComparison.Ordinal);
        Assert.Equal("200", page.Seen.Status);
        Assert.Contains("\"verdict\": \"adopt\"", page.Seen.Body, StringComparison.Ordinal);
    }

    [ChromiumFact]
    public void Page_ListedAndTriedOut_FitsIntoAWideAndANarrowWindow()
    {
        Assert.Equal([1280, 390, 1280, 390], page.Seen.Widths.Select(shown => shown.Viewport));
        Assert.All(page.Seen.Widths, shown =>
            Assert.True(
                shown.Width <= shown.Viewport && shown.Beyond.Count == 0,
                $"'{shown.Name}' takes {shown.Width} of {shown.Viewport} px; beyond its edge: {string.Join(", ", shown.Beyond)}. Pictures: {page.Pictures}"
            )
        );
    }

    [ChromiumFact]
    public void Pictures_OfThePage_AreThereToBeLookedAt() =>
        Assert.Equal(
            ["answer-1280.png", "answer-390.png", "list-1280.png", "list-390.png"],
            Directory.GetFiles(page.Pictures, "*.png").Select(Path.GetFileName).Order(StringComparer.Ordinal)
        );

    /// <summary>What was on the page.</summary>
    /// <param name="Operations">Names of the operations listed.</param>
    /// <param name="Asked">Address that the operation tried out was sent to.</param>
    /// <param name="Status">Status of its answer.</param>
    /// <param name="Body">Body of its answer.</param>
    /// <param name="Widths">How wide the page was.</param>
    /// <param name="Outside">Requests to other machines.</param>
    /// <param name="Errors">What went wrong on the page.</param>
    public sealed record View(
        IReadOnlyList<string> Operations,
        string Asked,
        string Status,
        string Body,
        IReadOnlyList<WidthOf> Widths,
        IReadOnlyList<string> Outside,
        IReadOnlyList<string> Errors
    );

    /// <summary>How wide a view was, and what reached beyond its edge.</summary>
    public sealed record WidthOf(string Name, int Viewport, int Width, IReadOnlyList<string> Beyond);

    /// <summary>Opens the page once for all tests.</summary>
    public sealed class ShownPage : IAsyncLifetime
    {
        private readonly RunningService service = new();

        public string Address => service.Address;

        /// <summary>Pictures of the page; they stay beside the built tests until the next run.</summary>
        public string Pictures { get; } = Path.Combine(AppContext.BaseDirectory, "reference-page");

        public View Seen { get; private set; } = null!;

        public async Task InitializeAsync()
        {
            // Where it is missing every test is skipped, but fixtures are made all the same.
            if (Chromium.Missing is not null)
                return;
            if (Directory.Exists(Pictures))
                Directory.Delete(Pictures, recursive: true);
            Directory.CreateDirectory(Pictures);
            await service.InitializeAsync();
            var run = await NodeTools.RunScriptAsync(
                Repository.PathOf("tests", "CalibrationApi.Contract.Tests", "Browser", "reference-page.mjs"),
                Chromium.Executable,
                Address,
                Pictures
            );
            Seen =
                run.ExitCode == 0
                    ? JsonSerializer.Deserialize<View>(run.Output, JsonSerializerOptions.Web)!
                    : throw new InvalidOperationException($"The page could not be tried. {run.Everything}");
        }

        public Task DisposeAsync() => service.DisposeAsync();
    }
}
