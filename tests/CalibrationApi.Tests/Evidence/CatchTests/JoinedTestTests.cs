using System.Globalization;

namespace CalibrationApi.Tests.Evidence.CatchTests;

/// <summary>What a test takes from the history of its series, and that it says so.</summary>
public sealed class JoinedTestTests(RecordService service) : IClassFixture<RecordService>
{
    [Fact]
    public async Task Resolve_NoHistory_TakesDefaultsAndSaysSo()
    {
        var farm = await Farm.CreateAsync(service);

        var test = (await farm.TestAsync(test => test.With("/valueInForce", Draft.Quantity(0.342, "kg/rev")))).Body;

        Assert.Empty(test.At("/usedHistory")!.AsObject());
        Assert.Contains("repeatability", Assumptions(test));
        Assert.Contains("tolerance", Assumptions(test));
    }

    // By hand: deviations of 1 % to both sides of the mean in each of two tests, over 2 + 2 degrees of freedom, so 1 %;
    // the weighing and counting parts are made negligible.
    [Fact]
    public async Task Repeatability_EnoughEarlierCatches_IsTheirPooledScatter()
    {
        var farm = await ExactFarmAsync();
        await TestAsync(farm, 1, 0.396, 0.400, 0.404);
        await TestAsync(farm, 2, 0.495, 0.500, 0.505);

        var test = await TestAsync(farm, 3, 0.398, 0.402);

        Assert.Equal(1, test.Number("/usedHistory/repeatability/value/value"), 1e-4);
        Assert.Equal("%", test.Word("/usedHistory/repeatability/value/unit"));
        Assert.Equal(4, test.Number("/usedHistory/repeatability/degreesOfFreedom"));
        Assert.Equal(2, test.Number("/usedHistory/repeatability/tests"));
        Assert.Equal(6, test.Number("/usedHistory/repeatability/catches"));
        Assert.Equal(test.Number("/usedHistory/repeatability/value/value"), test.Number("/resolved/repeatability/value"));
        Assert.Equal(4, test.Number("/resolved/repeatabilityDegreesOfFreedom"));
        Assert.DoesNotContain("default-repeatability-used", test.Codes("/evaluation/findings"));
    }

    [Fact]
    public async Task Repeatability_TooFewEarlierCatches_IsTheDefault()
    {
        var farm = await ExactFarmAsync();
        await TestAsync(farm, 1, 0.396, 0.400, 0.404);
        await TestAsync(farm, 2, 0.398, 0.402);
        // Single catches say nothing about scatter.
        await TestAsync(farm, 3, 0.400);
        await TestAsync(farm, 4, 0.400);

        Assert.False((await TestAsync(farm, 5, 0.398, 0.402)).Has("/usedHistory/repeatability"));
    }

    [Theory]
    [InlineData("/element", "fine")]
    [InlineData("/setting", "low")]
    public async Task Repeatability_OfAnotherSeries_IsNotTaken(string member, string other)
    {
        var farm = await ExactFarmAsync();
        await TestAsync(farm, 1, 0.396, 0.400, 0.404);
        await TestAsync(farm, 2, 0.396, 0.400, 0.404);

        Assert.True((await TestAsync(farm, 3, 0.398, 0.402)).Has("/usedHistory/repeatability"));
        Assert.False((await TestAsync(farm, 3, draft => draft.With(member, other), 0.398, 0.402)).Has("/usedHistory/repeatability"));
    }

    [Fact]
    public async Task Repeatability_OfAnotherProductOrMachine_IsNotTaken()
    {
        var farm = await ExactFarmAsync();
        var other = await ExactFarmAsync();
        await TestAsync(farm, 1, 0.396, 0.400, 0.404);
        await TestAsync(farm, 2, 0.396, 0.400, 0.404);

        Assert.False(
            (await TestAsync(farm, 3, draft => draft.With("/product", other.Product).Without("/lot"), 0.398, 0.402)).Has(
                "/usedHistory/repeatability"
            )
        );
        Assert.False(
            (await TestAsync(farm, 3, draft => draft.With("/machine", other.Machine), 0.398, 0.402)).Has("/usedHistory/repeatability")
        );
    }

    [Fact]
    public async Task Repeatability_SupersededTest_CountsNoLonger()
    {
        var farm = await ExactFarmAsync();
        await TestAsync(farm, 1, 0.396, 0.400, 0.404);
        var wrong = await TestAsync(farm, 2, 0.34, 0.40, 0.46);
        var right = await TestAsync(farm, 2, draft => draft.With("/supersedes", Farm.Supersedes(wrong.Word("/id"))), 0.396, 0.400, 0.404);

        // The replacement does not lean on what it replaces.
        Assert.False(right.Has("/usedHistory/repeatability"));
        var test = await TestAsync(farm, 3, 0.398, 0.402);
        Assert.Equal(2, test.Number("/usedHistory/repeatability/tests"));
        Assert.Equal(1, test.Number("/usedHistory/repeatability/value/value"), 1e-4);
    }

    [Fact]
    public async Task Repeatability_LateEntry_KnowsOnlyWhatHappenedBefore()
    {
        var farm = await ExactFarmAsync();
        await TestAsync(farm, 11, 0.396, 0.400, 0.404);
        await TestAsync(farm, 12, 0.396, 0.400, 0.404);

        Assert.True((await TestAsync(farm, 13, 0.398, 0.402)).Has("/usedHistory/repeatability"));
        Assert.False((await TestAsync(farm, 5, 0.398, 0.402)).Has("/usedHistory/repeatability"));
    }

    [Fact]
    public async Task Repeatability_TestThatWasToBeInvestigated_IsLeftOut()
    {
        var farm = await ExactFarmAsync();
        await TestAsync(farm, 1, 0.396, 0.400, 0.404);
        var odd = await TestAsync(farm, 2, 0.30, 0.40, 0.50);
        Assert.Equal("investigate", odd.Word("/evaluation/verdict"));

        Assert.False((await TestAsync(farm, 3, 0.398, 0.402)).Has("/usedHistory/repeatability"));
    }

    // A meter that scattered more than any rule would take as an input is still tested.
    [Fact]
    public async Task Repeatability_HistoryBeyondTheRangeOfTheMember_IsTakenAtItsLimit()
    {
        var farm = await ExactFarmAsync();
        foreach (var day in (int[])[1, 2, 3, 4, 5])
            await TestAsync(farm, day, draft => draft.With("/repeatability", Draft.Quantity(30, "%")), 0.2, 0.6);

        Assert.Equal((30, "%"), (await TestAsync(farm, 6, 0.4, 0.41)).Quantity("/usedHistory/repeatability/value"));
    }

    // Half the mean squared difference of neighbours' logarithms less their mean random variance, as the engine defines it;
    // values and random uncertainties are read from the stored rows.
    [Fact]
    public async Task DayToDay_FiveEarlierTests_IsTheirScatterFromDayToDay()
    {
        var farm = await ExactFarmAsync();
        double[] days = [0.400, 0.412, 0.400, 0.412, 0.400];
        for (var day = 1; day <= days.Length; day++)
        {
            var earlier = await TestAsync(farm, day, 0.999 * days[day - 1], 1.001 * days[day - 1]);
            Assert.False(earlier.Has("/usedHistory/dayToDay"), $"after {day - 1} tests");
        }

        var test = await TestAsync(farm, 6, 0.400, 0.401);

        var random = Enumerable
            .Range(1, 5)
            .Select(day =>
                service.Read<double>(
                    "select random from catch_tests where machine = @Machine and occurred_at like @day",
                    new { farm.Machine, day = $"2026-04-0{day}%" }
                )
            )
            .ToArray();
        var squares = 4 * Math.Pow(Math.Log(1.03), 2);
        var known = Enumerable.Range(1, 4).Sum(i => random[i] * random[i] + random[i - 1] * random[i - 1]);
        Assert.Equal(100 * Math.Sqrt((squares - known) / 8), test.Number("/usedHistory/dayToDay/value/value"), 1e-6);
        Assert.Equal(5, test.Number("/usedHistory/dayToDay/tests"));
        Assert.Equal(test.Number("/usedHistory/dayToDay/value/value"), test.Number("/resolved/dayToDay/value"));
        Assert.DoesNotContain(
            "dayToDay",
            Assumptions(test).Where(name => Origin(test, name).Contains("default", StringComparison.Ordinal))
        );
    }

    [Fact]
    public async Task DayToDay_SupersededTest_CountsNoLonger()
    {
        var farm = await ExactFarmAsync();
        string last = "";
        for (var day = 1; day <= 5; day++)
            last = (await TestAsync(farm, day, 0.400, 0.401)).Word("/id");
        Assert.True((await TestAsync(farm, 6, 0.400, 0.401)).Has("/usedHistory/dayToDay"));

        // The replacement is of another element, so that this series has one test less.
        await TestAsync(farm, 5, draft => draft.With("/element", "fine").With("/supersedes", Farm.Supersedes(last)), 0.4);

        Assert.Equal(5, (await TestAsync(farm, 7, 0.400, 0.401)).Number("/usedHistory/dayToDay/tests"));
        Assert.False((await TestAsync(farm, 6, 0.400, 0.401)).Has("/usedHistory/dayToDay"));
    }

    [Fact]
    public async Task ValueInForce_AdoptedBefore_IsWhatTheTestIsComparedWith()
    {
        var farm = await Farm.CreateAsync(service);
        var adopted = await farm.AdoptAsync();

        var test = (await farm.TestAsync()).Body;

        Assert.Equal(adopted.Id, test.Word("/usedHistory/valueInForce/adoption"));
        Assert.Equal("2026-03-02T08:00:00+01:00", test.Word("/usedHistory/valueInForce/since"));
        Assert.Equal((0.342, "kg/rev"), test.Quantity("/usedHistory/valueInForce/value"));
        Assert.Equal("value-in-force", test.Word("/evaluation/changeFrom"));
        Assert.Equal(100 * (test.Number("/evaluation/massPerRevolution/value") / 0.342 - 1), test.Number("/evaluation/change/value"), 1e-9);
    }

    [Fact]
    public async Task ValueInForce_AtTheTimeOfTheTest_IsTaken()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.36, "kg/rev")).With("/occurredAt", "2026-04-01T08:00:00Z")
        );
        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.39, "kg/rev")).With("/occurredAt", "2026-05-01T08:00:00Z")
        );

        Assert.Equal(0.36, (await farm.TestAsync()).Body.Number("/resolved/valueInForce/value"));
        Assert.Equal(
            0.342,
            (await farm.TestAsync(test => test.With("/occurredAt", "2026-03-20T08:00:00Z"))).Body.Number("/resolved/valueInForce/value")
        );
        Assert.False((await farm.TestAsync(test => test.With("/occurredAt", "2026-03-01T08:00:00Z"))).Body.Has("/resolved/valueInForce"));
    }

    [Fact]
    public async Task ValueInForce_RestingOnATest_BringsItsUncertaintyAndItsScale()
    {
        var farm = await Farm.CreateAsync(service);
        var basis = await farm.TestAsync();
        await farm.AdoptAsync(adoption =>
            adoption
                .With("/test", basis.Id)
                .With("/typedIn", Draft.Quantity(0.363, "kg/rev"))
                .With("/occurredAt", "2026-04-18T08:00:00+02:00")
        );
        var otherScale = await service.CreateAsync("/v1/scales", Farm.ScaleDraft);

        var same = (await farm.TestAsync(test => test.With("/occurredAt", "2026-04-20T06:00:00Z"))).Body;
        var other = (await farm.TestAsync(test => test.With("/occurredAt", "2026-04-20T07:00:00Z").With("/scale", otherScale))).Body;
        await farm.CheckScaleAsync(check => check.With("/occurredAt", "2026-04-19T06:00:00Z"));
        var checkedBetween = (await farm.TestAsync(test => test.With("/occurredAt", "2026-04-20T08:00:00Z"))).Body;

        var random = service.Read<double>("select random from catch_tests where id = @Id", new { basis.Id });
        Assert.Equal(100 * random, same.Number("/usedHistory/valueInForce/value/relativeUncertainty/value"), 1e-9);
        Assert.False(same.Flag("/usedHistory/valueInForce/value/fromAnotherScale"));
        Assert.True(other.Flag("/usedHistory/valueInForce/value/fromAnotherScale"));
        Assert.True(checkedBetween.Flag("/usedHistory/valueInForce/value/fromAnotherScale"));
    }

    // The controller goes on with the number, but what was thought to be known of it was wrong.
    [Fact]
    public async Task ValueInForce_RestingOnASupersededTest_IsStillComparedWithAndSaysSo()
    {
        var farm = await Farm.CreateAsync(service);
        var wrong = await farm.TestAsync();
        await farm.AdoptAsync(adoption =>
            adoption
                .With("/test", wrong.Id)
                .With("/typedIn", Draft.Quantity(0.363, "kg/rev"))
                .With("/occurredAt", "2026-04-18T08:00:00+02:00")
        );
        var before = (await farm.TestAsync(test => test.With("/occurredAt", "2026-04-19T06:00:00Z"))).Body;
        await farm.TestAsync(test =>
            test.With("/supersedes", Farm.Supersedes(wrong.Id))
                .With("/catches/0/tare", Draft.Quantity(2.62, "kg"))
                .With("/catches/1/tare", Draft.Quantity(2.62, "kg"))
        );

        var after = (await farm.TestAsync(test => test.With("/occurredAt", "2026-04-20T06:00:00Z"))).Body;

        Assert.DoesNotContain("basis-superseded", before.Codes("/findings"));
        Assert.Contains("basis-superseded", after.Codes("/findings"));
        Assert.Equal(0.363, after.Number("/resolved/valueInForce/value"));
        Assert.True(before.Has("/resolved/valueInForce/relativeUncertainty"));
        Assert.False(after.Has("/resolved/valueInForce/relativeUncertainty"));
        // The earlier test, when it is read again, says what came to light since.
        Assert.Contains("basis-superseded", (await service.GetAsync($"/v1/catch-tests/{before.Word("/id")}")).Body.Codes("/sinceThen"));
    }

    // A test is evidence and stays as it was recorded; what it was compared with may be told later, and then it says so.
    [Fact]
    public async Task ValueInForce_ToldOrCorrectedAfterTheTest_IsSaidWhenTheTestIsRead()
    {
        var farm = await Farm.CreateAsync(service);
        var first = await farm.AdoptAsync();
        var compared = (await farm.TestAsync()).Id;
        var stated = (await farm.TestAsync(test => test.With("/valueInForce", Draft.Quantity(0.36, "kg/rev")))).Id;
        Assert.False((await service.GetAsync($"/v1/catch-tests/{compared}")).Body.Has("/sinceThen"));

        await farm.AdoptAsync(adoption =>
            adoption.With("/typedIn", Draft.Quantity(0.35, "kg/rev")).With("/supersedes", Farm.Supersedes(first.Id, "misread"))
        );

        Assert.Equal(["value-in-force-changed"], (await service.GetAsync($"/v1/catch-tests/{compared}")).Body.Codes("/sinceThen"));
        Assert.False((await service.GetAsync($"/v1/catch-tests/{stated}")).Body.Has("/sinceThen"));
    }

    [Fact]
    public async Task ValueInForce_AdoptedFromTheTestItself_IsNoCorrectionOfIt()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var test = (await farm.TestAsync()).Body;

        // Typed in within the minute that the test was noted for.
        await farm.AdoptAsync(adoption =>
            adoption
                .With("/test", test.Word("/id"))
                .With("/typedIn", Draft.Quantity(0.363, "kg/rev"))
                .With("/occurredAt", test.Word("/occurredAt"))
        );

        Assert.False((await service.GetAsync($"/v1/catch-tests/{test.Word("/id")}")).Body.Has("/sinceThen"));
    }

    [Fact]
    public async Task Lot_OtherThanThatOfTheValueInForce_IsNoted()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.AdoptAsync();
        var lot = await service.CreateAsync("/v1/lots", Farm.LotDraft(farm.Product));

        Assert.DoesNotContain("other-lot", (await farm.TestAsync()).Body.Codes("/findings"));
        Assert.Contains("other-lot", (await farm.TestAsync(test => test.With("/lot", lot))).Body.Codes("/findings"));
        Assert.Contains("other-lot", (await farm.TestAsync(test => test.Without("/lot"))).Body.Codes("/findings"));
    }

    // A scale and a counter that add next to nothing, so that only the catches scatter.
    private async Task<Farm> ExactFarmAsync()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.With("/meters/0/counterResolution", Draft.Quantity(0, "rev")));
        var scale = (await service.GetAsync($"/v1/scales/{farm.Scale}")).Expect(200);
        (
            await service.PutAsync(
                $"/v1/scales/{farm.Scale}",
                Draft.Of("""{ "name": "fine", "division": { "value": 1, "unit": "g" }, "statedAccuracy": { "value": 1, "unit": "g" } }"""),
                scale.ETag
            )
        ).Expect(200);
        return farm;
    }

    private static Task<Answer> TestAsync(Farm farm, int day, params double[] perRevolution) =>
        TestAsync(farm, day, _ => { }, perRevolution);

    private static async Task<Answer> TestAsync(Farm farm, int day, Action<Draft> change, params double[] perRevolution) =>
        (
            await farm.TestAsync(test =>
            {
                test.With("/occurredAt", string.Create(CultureInfo.InvariantCulture, $"2026-04-{day:00}T06:00:00Z"))
                    .With("/catches", Farm.Catches(perRevolution));
                change(test);
            })
        ).Body;

    private static string[] Assumptions(Answer test) =>
        [.. test.List("/evaluation/assumptions").Select(one => one!["name"]!.GetValue<string>())];

    private static string Origin(Answer test, string name) =>
        test.List("/evaluation/assumptions").First(one => one!["name"]!.GetValue<string>() == name)!["origin"]!.GetValue<string>();
}
