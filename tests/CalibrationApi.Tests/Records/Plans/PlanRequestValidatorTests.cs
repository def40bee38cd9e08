namespace CalibrationApi.Tests.Records.Plans;

/// <summary>The rules of a plan, and that its records exist.</summary>
public sealed class PlanRequestValidatorTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/machine", null, "#/machine", "member-missing")]
    [InlineData("/scale", null, "#/scale", "member-missing")]
    [InlineData("/groundSpeed", null, "#/groundSpeed", "member-missing")]
    [InlineData("/groundSpeed", """{ "value": 900, "unit": "km/h" }""", "#/groundSpeed", "number-out-of-range")]
    [InlineData("/meters", null, "#/meters", "member-missing")]
    [InlineData("/meters", "[]", "#/meters", "too-few")]
    [InlineData("/meters/0/targetRate", null, "#/meters/0/targetRate", "member-missing")]
    [InlineData("/meters/0/targetRate", """{ "value": 90, "unit": "kg" }""", "#/meters/0/targetRate", "unit-wrong-dimension")]
    [InlineData("/meters/0/product", null, "#/meters/0/product", "member-missing")]
    [InlineData(
        "/meters/0/stand",
        """{ "plants": { "value": 300, "unit": "/m2" }, "survival": { "value": 80, "unit": "%" } }""",
        "#/meters/0/stand",
        "settings-at-odds"
    )]
    [InlineData("/fieldEfficiency", """{ "value": 0, "unit": "%" }""", "#/fieldEfficiency", "number-out-of-range")]
    [InlineData("/nutrients", "[]", "#/nutrients", "too-few")]
    [InlineData(
        "/nutrients",
        """[ { "nutrient": "N", "amount": { "value": 80, "unit": "kg/ha" } }, { "nutrient": "N", "amount": { "value": 70, "unit": "kg/ha" } } ]""",
        "#/nutrients/1/nutrient",
        "settings-at-odds"
    )]
    [InlineData(
        "/nutrientCredits",
        """[ { "nutrient": "P", "amount": { "value": -1, "unit": "kg/ha" } } ]""",
        "#/nutrientCredits/0/amount",
        "number-out-of-range"
    )]
    [InlineData("/seedRow", """{ "crop": "daisies", "soil": "light", "moisture": "good" }""", "#/seedRow/crop", "word-unknown")]
    [InlineData("/wantedPrecision", """{ "value": 60, "unit": "%" }""", "#/wantedPrecision", "number-out-of-range")]
    [InlineData(
        "/sowingConditions",
        """{ "airTemperature": { "value": -300, "unit": "degC" } }""",
        "#/sowingConditions/airTemperature",
        "number-out-of-range"
    )]
    public async Task Plan_MemberThatBreaksARule_IsRefusedThere(string pointer, string? json, string at, string code)
    {
        var farm = await Farm.CreateAsync(service);
        var draft = json is null ? farm.PlanDraft.Without(pointer) : farm.PlanDraft.With(pointer, Draft.Json(json));

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/plans", draft))).RefusedAsync(422, at, code);
    }

    [Theory]
    [InlineData("/machine")]
    [InlineData("/scale")]
    [InlineData("/container")]
    [InlineData("/meters/0/product")]
    [InlineData("/meters/0/lot")]
    public async Task Plan_UnknownRecord_IsRefusedAtItsMember(string pointer)
    {
        var farm = await Farm.CreateAsync(service);
        var created = (await service.PostAsync("/v1/plans", farm.PlanDraft)).Expect(201);
        var draft = farm.PlanDraft.With(pointer, Farm.NoRecord);

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/plans", draft))).RefusedAsync(422, "#" + pointer, "id-unknown");
        await (await service.PutAsync($"/v1/plans/{created.Id}", draft, created.ETag)).RefusedAsync(422, "#" + pointer, "id-unknown");
        Assert.Equal(created.ETag, (await service.GetAsync($"/v1/plans/{created.Id}")).ETag);
    }

    [Fact]
    public async Task Plan_SeveralUnknownRecords_AreToldAtOnce()
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm.PlanDraft.With("/machine", Farm.NoRecord).With("/scale", Farm.NoRecord).With("/meters/0/product", Farm.NoRecord);

        var problem = await (await service.PostAsync("/v1/plans", draft)).ProblemAsync(422);

        Assert.Equal(
            ["#/machine", "#/meters/0/product", "#/scale"],
            problem.Faults.Select(fault => fault.Pointer).Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData("""{ "plants": { "value": 300, "unit": "/m2" } }""", "#/meters/0/stand/emergence", "member-missing")]
    [InlineData("""{ "survival": { "value": 80, "unit": "%" } }""", "#/meters/0/stand/plants", "member-missing")]
    [InlineData(
        """{ "plants": { "value": 300, "unit": "/m2" }, "survival": { "value": 80, "unit": "%" }, "emergence": { "value": 85, "unit": "%" } }""",
        "#/meters/0/stand/survival",
        "settings-at-odds"
    )]
    [InlineData(
        """{ "plants": { "value": 300, "unit": "/m2" }, "survival": { "value": 101, "unit": "%" } }""",
        "#/meters/0/stand/survival",
        "number-out-of-range"
    )]
    public async Task Stand_ThatBreaksARule_IsRefusedThere(string json, string at, string code)
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm.PlanDraft.Without("/meters/0/targetRate").With("/meters/0/stand", Draft.Json(json));

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/plans", draft))).RefusedAsync(422, at, code);
    }

    [Fact]
    public async Task Stand_WithoutLot_IsRefused()
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm
            .PlanDraft.Without("/meters/0/targetRate")
            .Without("/meters/0/lot")
            .With(
                "/meters/0/stand",
                Draft.Json("""{ "plants": { "value": 300, "unit": "/m2" }, "survival": { "value": 80, "unit": "%" } }""")
            );

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/plans", draft))).RefusedAsync(
            422,
            "#/meters/0/lot",
            "member-missing"
        );
    }

    [Fact]
    public async Task Meters_OneOfThemTwice_AreRefused()
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm.PlanDraft;
        draft.Add("/meters", draft.At("/meters/0")!.DeepClone());

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/plans", draft))).RefusedAsync(
            422,
            "#/meters/1/meter",
            "settings-at-odds"
        );
    }

    [Theory]
    [InlineData("""[]""", "#/seedRow/localLimits", "too-few")]
    [InlineData(
        """[ { "source": "adviser", "nutrient": "potassium", "rate": { "value": 15, "unit": "kg/ha" } } ]""",
        "#/seedRow/localLimits/0/nutrient",
        "word-unknown"
    )]
    public async Task LocalLimits_ThatBreakARule_AreRefusedThere(string json, string at, string code)
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm
            .PlanDraft.With("/seedRow", Draft.Json("""{ "crop": "wheat", "soil": "medium", "moisture": "good" }"""))
            .With("/seedRow/localLimits", Draft.Json(json));

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/plans", draft))).RefusedAsync(422, at, code);
    }
}
