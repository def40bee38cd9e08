using System.Globalization;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Tests.Records.Machines;

/// <summary>The rules of a machine.</summary>
public sealed class MachineRequestValidatorTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/meters", null, "#/meters", "member-missing")]
    [InlineData("/meters", "[]", "#/meters", "too-few")]
    [InlineData("/meters/1", "null", "#/meters/1", "member-missing")]
    [InlineData("/meters/1/position", null, "#/meters/1/position", "member-missing")]
    [InlineData("/meters/1/position", "\"front\"", "#/meters/1/position", "settings-at-odds")]
    [InlineData("/meters/0/coveredWidth", null, "#/meters/0/coveredWidth", "member-missing")]
    [InlineData("/meters/0/coveredWidth", """{ "value": 0, "unit": "m" }""", "#/meters/0/coveredWidth", "number-out-of-range")]
    [InlineData("/meters/0/coveredWidth", """{ "value": 9 }""", "#/meters/0/coveredWidth", "unit-missing")]
    [InlineData("/meters/0/coveredWidth", """{ "value": 9, "unit": "kg" }""", "#/meters/0/coveredWidth", "unit-wrong-dimension")]
    [InlineData("/meters/0/elements", null, "#/meters/0/elements", "member-missing")]
    [InlineData("/meters/0/elements", "[]", "#/meters/0/elements", "too-few")]
    [InlineData("/meters/0/elements/1/name", "\"coarse\"", "#/meters/0/elements/1/name", "settings-at-odds")]
    [InlineData(
        "/meters/0/elements/0/displacementPerRevolution",
        """{ "value": -1, "unit": "L" }""",
        "#/meters/0/elements/0/displacementPerRevolution",
        "number-out-of-range"
    )]
    [InlineData("/meters/0/elements/0/pocketsPerRevolution", "0", "#/meters/0/elements/0/pocketsPerRevolution", "number-out-of-range")]
    [InlineData("/meters/0/tank", "\"two\"", "#/meters/0/tank", "records-at-odds")]
    [InlineData("/meters/0/outlets", "0", "#/meters/0/outlets", "number-out-of-range")]
    [InlineData("/meters/0/outlets", "501", "#/meters/0/outlets", "number-out-of-range")]
    [InlineData("/meters/0/counterResolution", """{ "value": 11, "unit": "rev" }""", "#/meters/0/counterResolution", "number-out-of-range")]
    [InlineData("/meters/0/controllerEntry/form", "\"mass-per-mile\"", "#/meters/0/controllerEntry/form", "word-unknown")]
    [InlineData("/meters/0/controllerEntry/unit", "\"kg\"", "#/meters/0/controllerEntry/unit", "unit-wrong-dimension")]
    [InlineData("/meters/0/controllerEntry/decimals", "10", "#/meters/0/controllerEntry/decimals", "number-out-of-range")]
    [InlineData("/meters/0/controllerEntry/revolutions", "20", "#/meters/0/controllerEntry/revolutions", "settings-at-odds")]
    [InlineData(
        "/meters/0/controllerEntry",
        """{ "form": "mass-per-revolutions", "unit": "kg", "decimals": 2 }""",
        "#/meters/0/controllerEntry/revolutions",
        "member-missing"
    )]
    [InlineData(
        "/meters/0/controllerEntry",
        """{ "form": "mass-per-pulse", "unit": "g", "decimals": 3 }""",
        "#/meters/0/pulsesPerRevolution",
        "member-missing"
    )]
    [InlineData("/tanks", """[ { "name": "one" }, { "name": "one" } ]""", "#/tanks/1/name", "settings-at-odds")]
    [InlineData("/tanks/0/name", null, "#/tanks/0/name", "member-missing")]
    [InlineData("/drive", "\"chain\"", "#/drive", "word-unknown")]
    [InlineData("/workingWidth", """{ "value": 300, "unit": "m" }""", "#/workingWidth", "number-out-of-range")]
    [InlineData("/timeZone", "\"Europe/Wien\"", "#/timeZone", "word-unknown")]
    [InlineData("/timeZone", "\"europe/vienna\"", "#/timeZone", "word-unknown")]
    [InlineData("/timeZone", "\"+02:00\"", "#/timeZone", "word-unknown")]
    [InlineData("/timeZone", "\"UTC+02\"", "#/timeZone", "word-unknown")]
    [InlineData("/timeZone", "\"W. Europe Standard Time\"", "#/timeZone", "word-unknown")]
    [InlineData("/restorePoints/0/name", null, "#/restorePoints/0/name", "member-missing")]
    public async Task Machine_MemberThatBreaksARule_IsRefusedThere(string pointer, string? json, string at, string code)
    {
        var draft = json is null ? Farm.MachineDraft.Without(pointer) : Farm.MachineDraft.With(pointer, Draft.Json(json));
        if (pointer == "/tanks/0/name")
            draft.Without("/meters/0/tank");

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/machines", draft))).RefusedAsync(422, at, code);
    }

    [Theory]
    [InlineData(0, null)]
    [InlineData(1, "#/meters")]
    public async Task Machine_MoreElementsThanAMachineMayHave_IsRefused(int more, string? at)
    {
        var draft = new Draft(LargestMachine.Machine());
        for (var i = 0; i < more; i++)
            draft.Add("/meters/63/elements", new JsonObject { ["name"] = string.Create(CultureInfo.InvariantCulture, $"spare {i}") });

        var reply = await service.PostAsync("/v1/machines", draft);

        if (at is null)
            reply.Expect(201);
        else
            await reply.RefusedAsync(422, at, "too-many");
    }

    [Theory]
    [InlineData("Europe/Vienna")]
    [InlineData("America/Argentina/Buenos_Aires")]
    [InlineData("Etc/UTC")]
    [InlineData("Australia/Eucla")]
    public async Task Machine_TimeZoneOfTheIanaDatabase_IsTaken(string zone) =>
        await service.CreateAsync("/v1/machines", Farm.MachineDraft.With("/timeZone", zone));

    [Fact]
    public async Task Machine_WithoutATimeZone_CountsItsDaysInUtc()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.Without("/timeZone"));

        Assert.Equal(
            "2026-04-18",
            (await farm.TestAsync(test => test.With("/occurredAt", "2026-04-19T00:30:00+02:00"))).Body.Word("/localDate")
        );
    }

    // An element of the same name may sit in two meters; a position is unique on one machine only.
    [Fact]
    public async Task Machine_SameElementInTwoMetersAndSamePositionOnTwoMachines_AreTaken()
    {
        await service.CreateAsync("/v1/machines", Farm.MachineDraft.With("/meters/1/elements/0/name", "coarse"));
        await service.CreateAsync("/v1/machines", Farm.MachineDraft);
    }

    [Fact]
    public async Task Machine_WithTheMostMeters_IsTakenAndWorks()
    {
        var meters = new JsonArray([.. Enumerable.Range(0, 64).Select(Meter)]);
        var farm = await Farm.CreateAsync(service, machine => machine.With("/meters", meters));

        var oneMore = Farm.MachineDraft.With("/meters", new JsonArray([.. Enumerable.Range(0, 65).Select(Meter)]));
        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/machines", oneMore))).RefusedAsync(422, "#/meters", "too-many");

        Assert.Equal(64, (await service.GetAsync($"/v1/machines/{farm.Machine}")).Body.List("/meters").Count);
        var stored = await farm.TestAsync(test => test.With("/meter", "meter 63").With("/element", "element 49"));
        Assert.Equal("seeder, meter 63", stored.Body.Word("/resolved/meter"));
        // A plan over all of them, its catch plan, and the machine as one row of a table.
        var plan = farm.PlanDraft.With(
            "/meters",
            new JsonArray([
                .. Enumerable
                    .Range(0, 64)
                    .Select(i =>
                        (JsonNode)
                            new JsonObject
                            {
                                ["meter"] = $"meter {i}",
                                ["element"] = "element 0",
                                ["product"] = farm.Product,
                                ["targetRate"] = Draft.Quantity(90, "kg/ha"),
                                ["startValue"] = Draft.Quantity(0.342, "kg/rev"),
                            }
                    ),
            ])
        );
        var id = await service.CreateAsync("/v1/plans", plan);
        Assert.Equal(64, (await service.GetAsync($"/v1/plans/{id}/catch-plan")).Expect(200).Body.List("/meters").Count);
        var rows = Rfc4180.Read((await service.GetAsync("/v1/machines", "text/csv")).Text);
        Assert.Contains(rows, row => row["meters.elements.name"].Split("; ").Length == 64);
    }

    [Fact]
    public async Task Machine_BodyOfTheGreatestSize_IsTakenAndOneByteMoreIsNot()
    {
        const int Most = 1024 * 1024;
        var text = Farm.MachineDraft.Text;

        var taken = await service.PostAsync("/v1/machines", text + new string(' ', Most - text.Length));
        var refused = await service.WithoutTraceAsync(() =>
            service.PostAsync("/v1/machines", text + new string(' ', Most - text.Length + 1))
        );

        Assert.Equal("seeder", (await service.GetAsync($"/v1/machines/{taken.Expect(201).Id}")).Body.Word("/name"));
        await refused.RefusedAsync(413, null, "body-too-large");
    }

    [Fact]
    public async Task Machine_SeveralThingsWrong_AreToldAtOnce()
    {
        var draft = Farm
            .MachineDraft.Without("/name")
            .With("/drive", "chain")
            .With("/meters/1/position", "front")
            .With("/timeZone", "nowhere");

        var problem = await (await service.PostAsync("/v1/machines", draft)).ProblemAsync(422);

        Assert.Equal(
            ["#/drive", "#/meters/1/position", "#/name", "#/timeZone"],
            problem.Faults.Select(fault => fault.Pointer).Order(StringComparer.Ordinal)
        );
    }

    // Days in answers follow the machine: a zone put right later puts them right too.
    [Fact]
    public async Task Machine_TimeZoneDescribedAnew_ChangesDaysInAnswers()
    {
        var farm = await Farm.CreateAsync(service);
        var id = (await farm.TestAsync(test => test.With("/occurredAt", "2026-04-18T23:30:00Z"))).Id;
        Assert.Equal("2026-04-19", (await service.GetAsync($"/v1/catch-tests/{id}")).Body.Word("/localDate"));

        (await service.PutAsync($"/v1/machines/{farm.Machine}", Farm.MachineDraft.With("/timeZone", "America/Regina"), "*")).Expect(200);

        Assert.Equal("2026-04-18", (await service.GetAsync($"/v1/catch-tests/{id}")).Body.Word("/localDate"));
    }

    // As many elements as a meter may have on the last one, on the others as many as the machine then may.
    private static JsonNode Meter(int number) =>
        new JsonObject
        {
            ["position"] = string.Create(CultureInfo.InvariantCulture, $"meter {number}"),
            ["coveredWidth"] = Draft.Quantity(9, "m"),
            ["elements"] = new JsonArray([
                .. Enumerable
                    .Range(0, number == 63 ? 50 : 19)
                    .Select(i => new JsonObject { ["name"] = string.Create(CultureInfo.InvariantCulture, $"element {i}") }),
            ]),
        };
}
