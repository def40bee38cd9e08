using System.Globalization;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.History;

/// <summary>The history of everything that happened, and the lists that are parts of it.</summary>
public sealed class ListHistoryTests(SeasonService season) : IClassFixture<SeasonService>
{
    private RecordService Service => season.Service;

    public static TheoryData<string> Filters =>
        [
            "machine",
            "meter",
            "element",
            "product",
            "lot",
            "scale",
            "plan",
            "verdict",
            "passed",
            "failed",
            "from",
            "until",
            "span",
            "machine-and-element",
            "meter-and-verdict",
        ];

    [Theory]
    [MemberData(nameof(Filters))]
    public async Task List_Filter_KeepsWhatFitsAndNothingElse(string name)
    {
        var (query, fits) = Filter(name);
        var all = await Service.ItemsAsync("/v1/history");

        var kept = await Service.ItemsAsync($"/v1/history?limit=2&{query}");

        var expected = all.Where(fits).Select(Id).ToArray();
        Assert.InRange(expected.Length, 1, all.Count - 1);
        Assert.Equal(expected, kept.Select(Id));
    }

    [Theory]
    [InlineData("catch-tests", "catch-test", 6)]
    [InlineData("adoptions", "adoption", 2)]
    [InlineData("scale-checks", "scale-check", 2)]
    public async Task List_OfOneKind_IsItsPartOfTheHistory(string path, string kind, int count)
    {
        var all = await Service.ItemsAsync("/v1/history");

        var part = await Service.ItemsAsync($"/v1/{path}");

        Assert.Equal(count, part.Count);
        Assert.Equal(
            all.Where(line => Text(line, "kind") == kind).Select(line => line.ToJsonString()),
            part.Select(line => line.ToJsonString())
        );
        // Every line leads to its record.
        foreach (var line in part)
            Assert.Equal(Id(line), (await Service.GetAsync($"/v1/{path}/{Id(line)}")).Expect(200).Id);
    }

    [Fact]
    public async Task List_Order_IsByTheTimeWhenItHappened()
    {
        var newest = await Service.ItemsAsync("/v1/history?limit=3");
        var oldest = await Service.ItemsAsync("/v1/history?limit=3&order=oldest-first");

        Assert.Equal(10, newest.Count);
        Assert.Equal(newest.Select(Id).Reverse(), oldest.Select(Id));
        Assert.Equal(oldest.Select(Instant).Order(), oldest.Select(Instant));
    }

    [Fact]
    public async Task List_UnknownIdInAFilter_IsAnEmptyList()
    {
        foreach (var name in (string[])["machine", "product", "lot", "scale", "plan", "meter", "element"])
            Assert.Empty(await Service.ItemsAsync($"/v1/history?{name}={Farm.NoRecord}"));
    }

    [Fact]
    public async Task List_SupersededTest_StaysBesideTheOneInItsPlace()
    {
        var lines = (await Service.ItemsAsync($"/v1/history?machine={season.Two.Machine}")).ToDictionary(Id);

        Assert.Equal(season.Corrected.Right, Text(lines[season.Corrected.Wrong], "supersededBy"));
        Assert.Equal(season.Corrected.Wrong, Text(lines[season.Corrected.Right], "supersedes"));
        Assert.Equal("the tare was wrong", Text(lines[season.Corrected.Right], "reason"));
    }

    [Fact]
    public async Task List_LineOfATest_HoldsWhatTheTestFound()
    {
        var line = new Answer(Assert.Single(await Service.ItemsAsync($"/v1/history?plan={season.Plan}")));
        var test = (await Service.GetAsync($"/v1/catch-tests/{line.Word("/id")}")).Expect(200).Body;

        Assert.Equal("catch-test", line.Word("/kind"));
        Assert.Equal(test.Word("/occurredAt"), line.Word("/occurredAt"));
        Assert.Equal(test.Word("/receivedAt"), line.Word("/receivedAt"));
        Assert.Equal(test.Word("/localDate"), line.Word("/localDate"));
        Assert.Equal(test.Word("/evaluation/verdict"), line.Word("/verdict"));
        Assert.Equal(test.Quantity("/evaluation/massPerRevolution"), line.Quantity("/massPerRevolution"));
        Assert.Equal(
            test.Number("/evaluation/massPerRevolution/expandedUncertainty"),
            line.Number("/massPerRevolution/expandedUncertainty"),
            1e-15
        );
        Assert.Equal(test.Number("/evaluation/change/value"), line.Number("/change/value"), 1e-12);
        Assert.Equal("A. Operator", line.Word("/recordedBy"));
        foreach (var member in (string[])["machine", "meter", "element", "product", "lot", "scale", "plan"])
            Assert.Equal(test.Word($"/entered/{member}"), line.Word($"/{member}"));
    }

    [Fact]
    public async Task List_LineOfAnAdoption_HoldsTheNumberAndWhy()
    {
        var line = new Answer((await Service.ItemsAsync($"/v1/adoptions?machine={season.Two.Machine}"))[0]);

        Assert.Equal((363, "g/rev"), line.Quantity("/massPerRevolution"));
        Assert.Equal("from the chart", line.Word("/reason"));
        Assert.False(line.Has("/massPerRevolution/expandedUncertainty"));
        Assert.False(line.Has("/verdict"));
    }

    [Fact]
    public async Task List_LineOfAScaleCheck_HoldsItsErrorAndOutcome()
    {
        var line = new Answer((await Service.ItemsAsync($"/v1/scale-checks?scale={season.Two.Scale}"))[0]);

        Assert.Equal("failed", line.Word("/verdict"));
        Assert.Equal(1, line.Number("/scaleError/value"), 1e-9);
        Assert.Equal("2026-03-03", line.Word("/localDate"));
        Assert.False(line.Has("/massPerRevolution"));
    }

    // 05:59 UTC on the 22nd is one minute before midnight in Regina, which keeps UTC-6 all year (IANA time zone database).
    [Fact]
    public async Task List_LocalDate_IsThatOfTheMachine()
    {
        var lines = (await Service.ItemsAsync("/v1/catch-tests")).ToDictionary(Id);

        Assert.Equal("2026-04-21", Text(lines[season.Corrected.Wrong], "localDate"));
        Assert.Equal("2026-04-17", Text(lines[season.Corrected.Right], "localDate"));
    }

    // 1 lb is 0.453 592 37 kg (NIST SP 811, B.8).
    [Fact]
    public async Task List_InUsUnits_ConvertsEveryMassPerRevolution()
    {
        var asked = (await Service.ItemsAsync("/v1/history")).Where(line => line["massPerRevolution"] is not null).ToArray();
        var us = (await Service.ItemsAsync("/v1/history?units=us")).Where(line => line["massPerRevolution"] is not null).ToArray();

        Assert.NotEmpty(asked);
        foreach (var (line, converted) in asked.Zip(us))
        {
            var kilograms =
                line["massPerRevolution"]!["value"]!.GetValue<double>()
                * (line["massPerRevolution"]!["unit"]!.GetValue<string>() == "g/rev" ? 0.001 : 1);
            Assert.Equal("lb/rev", converted["massPerRevolution"]!["unit"]!.GetValue<string>());
            Assert.Equal(kilograms / 0.45359237, converted["massPerRevolution"]!["value"]!.GetValue<double>(), 1e-12);
        }
    }

    [Theory]
    [InlineData("verdict=good", "verdict", "word-unknown")]
    [InlineData("verdict=Keep", "verdict", "word-unknown")]
    [InlineData("order=random", "order", "word-unknown")]
    [InlineData("from=yesterday", "from", "time-wrong")]
    [InlineData("until=2026-04-18", "until", "time-wrong")]
    [InlineData("from=2026-04-18T00:00:00%2002:00", "from", "time-wrong")]
    [InlineData("from=", "from", "time-wrong")]
    public async Task List_FilterThatCannotBeMeant_IsRefusedByItsName(string query, string parameter, string code)
    {
        foreach (var path in (string[])["history", "catch-tests", "adoptions", "scale-checks"])
        {
            if (path == "adoptions" && parameter == "verdict")
                continue;
            var fault = (await (await Service.GetAsync($"/v1/{path}?{query}")).ProblemAsync(422)).Only();
            Assert.Equal((parameter, code), (fault.Parameter, fault.Code));
        }
    }

    [Theory]
    [InlineData("scale-checks?verdict=keep", 422, "verdict", "word-unknown")]
    [InlineData("catch-tests?verdict=passed", 422, "verdict", "word-unknown")]
    [InlineData("adoptions?verdict=adopt", 400, "verdict", "member-unknown")]
    [InlineData("adoptions?scale=x", 400, "scale", "member-unknown")]
    [InlineData("adoptions?plan=x", 400, "plan", "member-unknown")]
    [InlineData("scale-checks?machine=x", 400, "machine", "member-unknown")]
    [InlineData("scale-checks?product=x", 400, "product", "member-unknown")]
    public async Task List_FilterThatCanMatchNothing_IsRefused(string query, int status, string parameter, string code)
    {
        var fault = (await (await Service.GetAsync($"/v1/{query}")).ProblemAsync(status)).Only();

        Assert.Equal((parameter, code), (fault.Parameter, fault.Code));
    }

    // What a list does not take is what no line of it has.
    [Theory]
    [InlineData("catch-tests", "machine,meter,element,product,lot,scale,plan,verdict")]
    [InlineData("adoptions", "machine,meter,element,product,lot")]
    [InlineData("scale-checks", "scale,verdict")]
    public async Task List_FiltersThatItTakes_AreWhatItsLinesHave(string path, string filters)
    {
        var lines = await Service.ItemsAsync($"/v1/{path}");

        foreach (var name in (string[])["machine", "meter", "element", "product", "lot", "scale", "plan", "verdict"])
            Assert.Equal(filters.Split(',').Contains(name), lines.Any(line => line[name] is not null));
    }

    [Fact]
    public async Task List_SeveralFiltersWrong_AreToldAtOnce()
    {
        var problem = await (await Service.GetAsync("/v1/history?verdict=x&order=y&from=z")).ProblemAsync(422);

        Assert.Equal(["from", "order", "verdict"], problem.Faults.Select(fault => fault.Parameter).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task List_RecordsAddedWhileItIsRead_NeitherRepeatNorHideAny()
    {
        using var fresh = new RecordService();
        var farm = await Farm.CreateAsync(fresh);
        for (var day = 10; day < 16; day++)
            await AdoptAsync(farm, day);
        var before = (await fresh.ItemsAsync("/v1/history")).Select(Id).ToArray();

        var first = (await fresh.GetAsync("/v1/history?limit=2")).Expect(200);
        // Newer than all, of the same instant as the last one seen, and older than all.
        await AdoptAsync(farm, 20);
        await AdoptAsync(farm, 14);
        await AdoptAsync(farm, 5);
        var second = (await fresh.GetAsync(first.Next!)).Expect(200);
        await AdoptAsync(farm, 21);
        await AdoptAsync(farm, 12);
        var rest = await fresh.ItemsAsync(second.Next!);

        string[] seen = [.. first.Body.List("/items").Concat(second.Body.List("/items")).Concat(rest).Select(line => Id(line!))];
        Assert.Distinct(seen);
        Assert.Equal(before, seen.Where(before.Contains));
        // The late entry for the 5th came in while the list was read and lies ahead of the reader.
        Assert.Equal("2026-04-05T06:00:00Z", Text(rest[^1], "occurredAt"));
    }

    private static Task<Reply> AdoptAsync(Farm farm, int day) =>
        farm.AdoptAsync(adoption =>
            adoption.With("/occurredAt", string.Create(CultureInfo.InvariantCulture, $"2026-04-{day:00}T06:00:00Z"))
        );

    private (string Query, Func<JsonNode, bool> Fits) Filter(string name) =>
        name switch
        {
            "machine" => ($"machine={season.One.Machine}", line => Text(line, "machine") == season.One.Machine),
            "meter" => ("meter=rear", line => Text(line, "meter") == "rear"),
            "element" => ("element=fine", line => Text(line, "element") == "fine"),
            "product" => ($"product={season.Two.Product}", line => Text(line, "product") == season.Two.Product),
            "lot" => ($"lot={season.One.Lot}", line => Text(line, "lot") == season.One.Lot),
            "scale" => ($"scale={season.Two.Scale}", line => Text(line, "scale") == season.Two.Scale),
            "plan" => ($"plan={season.Plan}", line => Text(line, "plan") == season.Plan),
            "verdict" => ("verdict=investigate", line => Text(line, "verdict") == "investigate"),
            "passed" => ("verdict=passed", line => Text(line, "verdict") == "passed"),
            "failed" => ("verdict=failed", line => Text(line, "verdict") == "failed"),
            "from" => ("from=2026-04-18T06:40:00%2B02:00", line => Instant(line) >= At("2026-04-18T04:40:00Z")),
            "until" => ("until=2026-04-18T04:40:00Z", line => Instant(line) < At("2026-04-18T04:40:00Z")),
            "span" => ("from=2026-04-01T00:00:00Z&until=2026-04-20T06:00:00Z", line =>
                Instant(line) >= At("2026-04-01T00:00:00Z") && Instant(line) < At("2026-04-20T06:00:00Z")
            ),
            "machine-and-element" => ($"machine={season.One.Machine}&element=coarse", line =>
                Text(line, "machine") == season.One.Machine && Text(line, "element") == "coarse"
            ),
            "meter-and-verdict" => ("meter=front&verdict=investigate", line =>
                Text(line, "meter") == "front" && Text(line, "verdict") == "investigate"
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(name)),
        };

    private static string Id(JsonNode line) => line["id"]!.GetValue<string>();

    private static string? Text(JsonNode line, string member) => line[member]?.GetValue<string>();

    private static DateTimeOffset Instant(JsonNode line) => At(Text(line, "occurredAt")!);

    private static DateTimeOffset At(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);
}
