using System.Text.Json;
using System.Text.Json.Serialization;
using CalibrationApi.Hosting.OpenApi;
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
    public void Groups_OfThePage_StandInTheOrderOfTheWork()
    {
        string[] described = ["Machines", "Products", "Lots"];
        string[] worked = ["Plans", "Seeding rates", "Catch plans", "Catch tests", "Values in force", "History"];
        string[] operated = ["Workspaces", "Keys", "Audit"];

        Assert.Equal(described, page.Seen.Groups.Take(3));
        Assert.Equal(worked, page.Seen.Groups.Where(worked.Contains));
        Assert.Equal(operated, page.Seen.Groups.TakeLast(3));
        // A new group is given its place.
        Assert.Empty(page.Seen.Groups.Except(DocumentDetails.Order));
    }

    [ChromiumFact]
    public void Filter_WordsOfASummary_LeaveTheOperationsThatHoldThemAll()
    {
        Assert.Contains("evaluateCatchTest", page.Seen.Filtered);
        Assert.InRange(page.Seen.Filtered.Count, 1, 6);
    }

    [ChromiumFact]
    public void Link_OfAnOpenedOperation_OpensItAgain()
    {
        Assert.EndsWith("/evaluateCatchTest", page.Seen.Linked.Link, StringComparison.Ordinal);
        Assert.Equal(["evaluateCatchTest"], page.Seen.Linked.Opened);
        Assert.True(page.Seen.Linked.IsInSight);
    }

    [ChromiumFact]
    public void Codes_Searched_ShowThoseWithEveryWordAndGiveWayToALink()
    {
        Assert.Contains("coarse-scale", page.Seen.Codes.Found);
        Assert.InRange(page.Seen.Codes.Found.Count, 1, page.Seen.Codes.All / 5);
        Assert.Equal($"{page.Seen.Codes.Found.Count} of {page.Seen.Codes.All} codes", page.Seen.Codes.Told);
        Assert.True(page.Seen.Codes.LeftForALink);
    }

    [ChromiumFact]
    public void Page_OnADeskAndOnAPhone_FitsAndIsLaidOutForThatWidth() =>
        Assert.All(page.Seen.Views, view =>
            Assert.True(
                view.Width <= view.Viewport && view.LaidOutFor == view.Viewport && view.Beyond.Count == 0,
                $"{view}: takes {view.Width}, laid out for {view.LaidOutFor}; beyond its edge: {string.Join(", ", view.Beyond)}. Pictures: {page.Pictures}"
            )
        );

    [ChromiumFact]
    public void Page_OnADeskAndOnAPhone_HasLettersThatCanBeRead() =>
        Assert.All(page.Seen.Views, view =>
            Assert.True(
                view.Smallest.Size >= 12,
                $"{view}: {view.Smallest.Element} has {view.Smallest.Size:F1} px. Pictures: {page.Pictures}"
            )
        );

    // WCAG 2.2, success criterion 1.4.3, asks for 3 for large or bold text; that is held to for all of it.
    [ChromiumFact]
    public void Page_ByDayAndByNight_HasContrast() =>
        Assert.All(page.Seen.Views, view =>
            Assert.True(
                view.Faint.Count == 0,
                $"{view}: too little contrast with the ground: {string.Join(", ", view.Faint)}. Pictures: {page.Pictures}"
            )
        );

    [ChromiumFact]
    public void Pictures_OfThePages_AreThereToBeLookedAt() =>
        Assert.Equal(
            page.Seen.Views.Select(view => $"{view.Name}-{view.Scheme}-{view.Viewport}.png").Order(StringComparer.Ordinal),
            Directory.GetFiles(page.Pictures, "*.png").Select(Path.GetFileName).Order(StringComparer.Ordinal)
        );

    /// <summary>What was on the pages.</summary>
    /// <param name="Operations">Names of the operations listed.</param>
    /// <param name="Groups">Names of their groups, in order.</param>
    /// <param name="Filtered">Names of the operations that a filter left.</param>
    /// <param name="Asked">Address that the operation tried out was sent to.</param>
    /// <param name="Status">Status of its answer.</param>
    /// <param name="Body">Body of its answer.</param>
    /// <param name="Linked">What a link to an operation opened.</param>
    /// <param name="Codes">What the page of codes found.</param>
    /// <param name="Views">How each view was laid out.</param>
    /// <param name="Outside">Requests to other machines.</param>
    /// <param name="Errors">What went wrong on the page.</param>
    public sealed record View(
        IReadOnlyList<string> Operations,
        IReadOnlyList<string> Groups,
        IReadOnlyList<string> Filtered,
        string Asked,
        string Status,
        string Body,
        LinkedOperation Linked,
        FoundCodes Codes,
        IReadOnlyList<Layout> Views,
        IReadOnlyList<string> Outside,
        IReadOnlyList<string> Errors
    );

    /// <summary>The operations that a link opened, and whether the eye meets them.</summary>
    public sealed record LinkedOperation(string Link, IReadOnlyList<string> Opened, bool IsInSight);

    /// <summary>What a search for codes left, and what it said.</summary>
    public sealed record FoundCodes(int All, IReadOnlyList<string> Found, string Told, bool LeftForALink);

    /// <summary>How a view was laid out: its width, what reached beyond its edge, its smallest letters and texts too faint.</summary>
    public sealed record Layout(
        string Name,
        string Scheme,
        int Viewport,
        int Width,
        [property: JsonPropertyName("layout")] int LaidOutFor,
        IReadOnlyList<string> Beyond,
        Letters Smallest,
        IReadOnlyList<string> Faint
    )
    {
        /// <inheritdoc/>
        public override string ToString() => $"'{Name}', {Scheme}, {Viewport} px";
    }

    /// <summary>A text and the size of its letters on the screen, px.</summary>
    public sealed record Letters(string Element, double Size);

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
