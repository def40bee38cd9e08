using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Hosting.Demo;

/// <summary>
/// The invented season, loaded by the service itself: complete, unchanged by a second start, and telling the story of its README.
/// </summary>
public sealed class DemoSeasonTests(LoadedSeason season) : IClassFixture<LoadedSeason>
{
    private const string Fertilizer = "019d0000-0002-7000-8000-000000000002";

    public static TheoryData<string, int[]> Verdicts =>
        new()
        {
            { "investigate", [7, 16] },
            { "repeat", [5, 14, 17, 32] },
            { "adopt", [1, 6, 10, 15, 18, 19, 24, 31, 33] },
            { "keep", [2, 3, 4, 8, 9, 11, 12, 13, 20, 21, 22, 23, 25, 26, 27, 28, 29, 30] },
        };

    public static TheoryData<int, string> RecordFindings =>
        new()
        {
            { 19, "other-lot" },
            { 19, "varies-from-day-to-day" },
            { 30, "scale-check-overdue" },
        };

    [Fact]
    public void Start_WithDemo_LoadsEveryRecordOfTheFile()
    {
        var loaded = season
            .First.Where(list => list.Key != "/v1/history")
            .SelectMany(list =>
                JsonNode.Parse(list.Value)!["items"]!.AsArray().Select(item => (list.Key, item!["id"]!.GetValue<string>()))
            );

        Assert.InRange(SeasonFile.CatchTests.Count, 25, 40);
        Assert.Equal(SeasonFile.Requests.Select(request => (request.Path, SeasonFile.Id(request.Body))).Order(), loaded.Order());
        Assert.Equal(SeasonFile.Evidence.Count, season.Items("/v1/history").Count);
    }

    [Fact]
    public void Start_WithDemoASecondTime_ChangesNothing()
    {
        Assert.NotEmpty(season.First);
        Assert.Equal(season.First, season.Second);
    }

    [Theory]
    [MemberData(nameof(Verdicts))]
    public void Verdicts_OfTheSeason_AreThoseOfItsStory(string verdict, int[] tests) =>
        Assert.Equal(
            tests,
            season
                .Items("/v1/catch-tests")
                .Where(test => test!["verdict"]!.GetValue<string>() == verdict)
                .Select(test => Number(test!))
                .Order()
        );

    [Fact]
    public void Verdicts_OfTheStory_NameEveryTest() =>
        Assert.Equal(SeasonFile.CatchTests.Select(Number).Order(), Verdicts.SelectMany(row => (int[])row[1]).Order());

    [Fact]
    public async Task History_OfTheFertilizerMeter_ShowsItsDriftAndItsCleaning()
    {
        var list = await season.GetAsync($"/v1/catch-tests?meter=middle&product={Fertilizer}&order=oldest-first");
        double[] values = [.. list.List("/items").Select(test => test!["massPerRevolution"]!["value"]!.GetValue<double>())];

        Assert.Equal(12, values.Length);
        Assert.All(values[..^3].Zip(values[1..^2]), pair =>
            Assert.True(pair.Second < 1.005 * pair.First, $"{pair.First} is followed by {pair.Second}")
        );
        Assert.InRange(values[^3] / values[0], 0.88, 0.91);
        Assert.All(values[^2..], cleaned => Assert.InRange(cleaned / values[0], 0.98, 1.02));
    }

    [Fact]
    public async Task Test_WithAForgottenTare_IsSupersededWithItsReason()
    {
        var (wrong, right) = (await season.CatchTestAsync(7), await season.CatchTestAsync(8));

        Assert.Equal("likely-mistake", Assert.Single(wrong.Codes("/evaluation/reasons")));
        Assert.Equal("tare-not-taken-off", wrong.Word("/evaluation/likelyMistakes/0/code"));
        Assert.Equal("#/catches/1", wrong.Word("/evaluation/likelyMistakes/0/catch"));
        Assert.Equal(right.Word("/id"), wrong.Word("/supersededBy/record"));
        Assert.Contains("not weighed", wrong.Word("/supersededBy/reason"), StringComparison.Ordinal);
        Assert.False(right.Has("/supersededBy"));
    }

    [Theory]
    [MemberData(nameof(RecordFindings))]
    public async Task Test_UnderItsCircumstances_HasItsFinding(int number, string code) =>
        Assert.Contains(code, (await season.CatchTestAsync(number)).Codes("/findings"));

    [Fact]
    public async Task Test_UnderOtherConditions_SaysSoInItsHeadline()
    {
        var test = await season.CatchTestAsync(10);

        Assert.Contains("conditions-differ", test.Codes("/evaluation/findings"));
        Assert.Contains("But the tank level was not as in sowing", test.Word("/evaluation/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Test_BeforeTheScaleFailed_SaysSoSinceThen()
    {
        Assert.Equal("failed", (await season.GetAsync(LoadedSeason.Path("scale-checks", 7, 4))).Word("/verdict"));
        Assert.Equal("scale-check-failed-later", Assert.Single((await season.CatchTestAsync(29)).Codes("/sinceThen")));
        Assert.False((await season.CatchTestAsync(31)).Has("/sinceThen"));
    }

    [Fact]
    public async Task ValueInForce_FoundOnAScaleThatFailedLater_SaysSo()
    {
        var inForce = await season.GetAsync(
            $"{LoadedSeason.Path("machines", 1, 1)}/values-in-force?product={Fertilizer}&at=2026-05-05T00:00:00Z"
        );

        Assert.Equal((13.39, "kg"), inForce.Quantity("/items/0/typedIn"));
        Assert.Equal("scale-check-failed-later", Assert.Single(inForce.Codes("/items/0/findings")));
    }

    [Fact]
    public async Task Adoptions_FromTests_AreTheNumbersThatTheTestsGaveButForOneSlip()
    {
        var otherwise = new List<int>();
        foreach (var adoption in SeasonFile.Adoptions.Where(adoption => adoption.ContainsKey("test")))
        {
            var test = await season.GetAsync($"/v1/catch-tests/{adoption["test"]!.GetValue<string>()}");
            if (
                test.Quantity("/evaluation/enter")
                != (adoption["typedIn"]!["value"]!.GetValue<double>(), adoption["typedIn"]!["unit"]!.GetValue<string>())
            )
                otherwise.Add(Number(adoption));
        }

        var slip = await season.GetAsync(LoadedSeason.Path("adoptions", 8, Assert.Single(otherwise)));
        Assert.Contains("adopted-otherwise", slip.Codes("/findings"));
        Assert.Contains("swapped", slip.Word("/supersededBy/reason"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(14, 15)]
    [InlineData(32, 33)]
    public async Task Test_OfALargeChange_IsBorneOutByTheOneSetUpAnew(int first, int second)
    {
        Assert.Equal("second-test-needed", Assert.Single((await season.CatchTestAsync(first)).Codes("/evaluation/reasons")));

        var confirmed = await season.CatchTestAsync(second);
        Assert.Equal("change-confirmed", Assert.Single(confirmed.Codes("/evaluation/reasons")));
        Assert.EndsWith($"{first:D4}", confirmed.Word("/evaluation/secondTest/test"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task CatchPlan_OfEveryPlan_IsComputed()
    {
        Assert.NotEmpty(SeasonFile.Plans);
        foreach (var plan in SeasonFile.Plans)
        {
            var computed = await season.GetAsync($"/v1/plans/{SeasonFile.Id(plan)}/catch-plan");
            Assert.Equal(plan["meters"]!.AsArray().Count, computed.List("/meters").Count);
        }
    }

    [Fact]
    public async Task Recomputation_OfEveryTest_GivesWhatItGave()
    {
        Assert.NotEmpty(SeasonFile.CatchTests);
        foreach (var test in SeasonFile.CatchTests)
            Assert.True((await season.RecomputeAsync(SeasonFile.Id(test))).Flag("/equal"), SeasonFile.Id(test));
    }

    private static int Number(JsonNode record) =>
        int.Parse(record["id"]!.GetValue<string>()[^4..], System.Globalization.CultureInfo.InvariantCulture);
}
