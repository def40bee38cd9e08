using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.Adoptions;

/// <summary>A number that something speaks against is kept only with a reason, and the reason stays in sight.</summary>
public sealed class TypedValueGuardTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData(8.24, "typed-off-value-in-force")]
    [InlineData(0.0824, "typed-off-value-in-force")]
    [InlineData(824, "typed-off-value-in-force")]
    [InlineData(7.81, "typed-decimal-slip")]
    [InlineData(0.781 / 2.2046, "typed-in-other-unit")]
    [InlineData(1.562, "typed-twice-or-half")]
    public async Task Adopt_ByHandFarFromTheValueBefore_IsRefused(double typed, string code)
    {
        var farm = await FarmWithoutDisplacementAsync();
        await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.781, "lb/rev")));

        var fault = await RefusedAsync(Later(farm).With("/typedIn", Draft.Quantity(typed, "lb/rev")), code);

        Assert.Contains("0.781 lb/rev, the value in force before", fault.Detail, StringComparison.Ordinal);
        Assert.Contains("despite", fault.Detail, StringComparison.Ordinal);
        Assert.Equal((0.781, "lb/rev"), new Answer(Assert.Single(await farm.InForceAsync())!).Quantity("/typedIn"));
    }

    [Theory]
    [InlineData(3.63, "typed-decimal-slip")]
    [InlineData(0.636, "typed-off-test")]
    [InlineData(0.342, "typed-off-test")]
    public async Task Adopt_NumberThatItsTestDoesNotExplain_IsRefused(double typed, string code)
    {
        var farm = await FarmWithoutDisplacementAsync();
        var test = (await farm.TestAsync()).Id;

        await RefusedAsync(Later(farm).With("/test", test).With("/typedIn", Draft.Quantity(typed, "kg/rev")), code);
    }

    [Fact]
    public async Task Adopt_ValueThatItsTestSaidToKeep_IsTaken()
    {
        var farm = await FarmWithoutDisplacementAsync();
        await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.374, "kg/rev")));
        var test = await farm.TestAsync(test =>
            test.With("/tolerance", Draft.Quantity(10, "%")).With("/wantedPrecision", Draft.Quantity(2.5, "%"))
        );
        Assert.Equal("keep", test.Body.Word("/evaluation/verdict"));

        (
            await service.PostAsync("/v1/adoptions", Later(farm).With("/test", test.Id).With("/typedIn", Draft.Quantity(0.374, "kg/rev")))
        ).Expect(201);
    }

    // 0.6 L of 0.62 kg/L hold 0.372 kg.
    [Fact]
    public async Task Adopt_MoreThanTheElementHolds_IsRefusedAlsoWhereNothingWasInForce()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.With("/meters/0/elements/0/kind", "closed-pockets"));

        var fault = await RefusedAsync(farm.Adoption.With("/typedIn", Draft.Quantity(0.45, "kg/rev")), "typed-more-than-element-holds");

        Assert.Contains("full it holds 0.372 kg/rev", fault.Detail, StringComparison.Ordinal);
        await RefusedAsync(
            farm.Adoption.With("/typedIn", Draft.Quantity(0.45, "kg/rev")).With("/despite", Despite("typed-off-test")),
            ("#/typedIn/value", "typed-more-than-element-holds"),
            ("#/despite/0", "settings-at-odds")
        );
    }

    // An open roller drags more along than its flutes hold.
    [Fact]
    public async Task Adopt_SameNumberOnAnOpenRoller_IsTaken()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.With("/meters/0/elements/0/kind", "open-flutes"));

        await farm.AdoptAsync(adoption => adoption.With("/typedIn", Draft.Quantity(0.45, "kg/rev")));
    }

    [Fact]
    public async Task Adopt_WithTheReason_IsKeptAndShownEverywhere()
    {
        var farm = await FarmWithoutDisplacementAsync();
        await farm.AdoptAsync();
        var draft = Later(farm).With("/typedIn", Draft.Quantity(0.684, "kg/rev")).With("/despite", Despite("typed-twice-or-half"));

        var adopted = (await service.PostAsync("/v1/adoptions", draft)).Expect(201);

        Assert.Equal("typed-twice-or-half", adopted.Body.Word("/entered/despite/0/code"));
        Assert.Equal(["adopted-despite"], adopted.Body.Codes("/findings"));
        Assert.Contains("twice or half", adopted.Body.Word("/findings/0/detail"), StringComparison.Ordinal);
        Assert.Contains("a wider roller was fitted", adopted.Body.Word("/findings/0/detail"), StringComparison.Ordinal);
        Assert.Equal(adopted.Bytes, (await service.GetAsync($"/v1/adoptions/{adopted.Id}")).Bytes);
        var inForce = new Answer(Assert.Single(await farm.InForceAsync())!);
        Assert.Equal(
            ("typed-twice-or-half", "a wider roller was fitted"),
            (inForce.Word("/despite/0/code"), inForce.Word("/despite/0/reason"))
        );
        Assert.Equal(["adopted-despite"], inForce.Codes("/findings"));
        foreach (var list in (string[])["history", "adoptions"])
        {
            var lines = (await service.GetAsync($"/v1/{list}?machine={farm.Machine}&order=oldest-first")).Expect(200).Body;
            Assert.False(lines.Has("/items/0/despiteCode"));
            Assert.Equal(
                ("typed-twice-or-half", "a wider roller was fitted"),
                (lines.Word("/items/1/despiteCode"), lines.Word("/items/1/despiteReason"))
            );
        }
    }

    [Fact]
    public async Task Adopt_ReasonForSomethingElseOrForNothing_IsRefused()
    {
        var farm = await FarmWithoutDisplacementAsync();
        await farm.AdoptAsync();
        var twice = Later(farm).With("/typedIn", Draft.Quantity(0.684, "kg/rev"));

        await RefusedAsync(
            twice.With("/despite", Despite("typed-decimal-slip")),
            ("#/typedIn/value", "typed-twice-or-half"),
            ("#/despite/0", "settings-at-odds")
        );
        await RefusedAsync(
            twice.With("/despite", Despite("typed-twice-or-half", "typed-twice-or-half")),
            "settings-at-odds",
            "#/despite/1"
        );
        await RefusedAsync(Later(farm).With("/despite", Despite("typed-twice-or-half")), "settings-at-odds", "#/despite/0");
        await RefusedAsync(Later(farm).With("/despite", Despite("because")), "word-unknown", "#/despite/0/code");
    }

    // Ten times the value before, and 919 % of what 0.6 L of 0.62 kg/L fill.
    [Fact]
    public async Task Adopt_WithMoreThanOneObjection_IsRefusedWithAllAndTakenWithAnAnswerToEach()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.With("/meters/0/elements/0/kind", "closed-pockets"));
        await farm.AdoptAsync();
        var tenfold = Later(farm).With("/typedIn", Draft.Quantity(3.42, "kg/rev"));
        const string Holds = "typed-more-than-element-holds",
            Slip = "typed-decimal-slip";

        await RefusedAsync(tenfold, ("#/typedIn/value", Holds), ("#/typedIn/value", Slip));
        await RefusedAsync(tenfold.With("/despite", Despite(Holds)), Slip);
        await RefusedAsync(tenfold.With("/despite", Despite(Slip)), Holds);
        var adopted = (await service.PostAsync("/v1/adoptions", tenfold.With("/despite", Despite(Slip, Holds)))).Expect(201).Body;

        Assert.Equal(2, adopted.Codes("/findings").Count(code => code == "adopted-despite"));
        Assert.Equal(
            [Slip, Holds],
            new Answer(Assert.Single(await farm.InForceAsync())!).List("/despite").Select(one => one!["code"]!.GetValue<string>())
        );
        var line = (await service.GetAsync($"/v1/adoptions?machine={farm.Machine}")).Expect(200).Body;
        Assert.Equal(
            ($"{Slip}; {Holds}", "a wider roller was fitted; a wider roller was fitted"),
            (line.Word("/items/0/despiteCode"), line.Word("/items/0/despiteReason"))
        );
    }

    // The wrong number is no measure for the one that corrects it.
    [Fact]
    public async Task Adopt_CorrectionOfAWrongNumber_IsComparedWithTheOneBeforeIt()
    {
        var farm = await FarmWithoutDisplacementAsync();
        await farm.AdoptAsync();
        var wrong = (
            await service.PostAsync(
                "/v1/adoptions",
                Later(farm).With("/typedIn", Draft.Quantity(0.684, "kg/rev")).With("/despite", Despite("typed-twice-or-half"))
            )
        )
            .Expect(201)
            .Id;

        (
            await service.PostAsync(
                "/v1/adoptions",
                Later(farm).With("/typedIn", Draft.Quantity(0.35, "kg/rev")).With("/supersedes", Farm.Supersedes(wrong))
            )
        ).Expect(201);
        await RefusedAsync(Later(farm).With("/typedIn", Draft.Quantity(0.684, "kg/rev")), "typed-twice-or-half");
    }

    private Task<Farm> FarmWithoutDisplacementAsync() =>
        Farm.CreateAsync(service, machine => machine.Without("/meters/0/elements/0/displacementPerRevolution"));

    private static Draft Later(Farm farm) => farm.Adoption.With("/occurredAt", "2026-04-20T08:00:00+02:00");

    private static JsonArray Despite(params string[] codes) =>
        [.. codes.Select(code => (JsonNode)new JsonObject { ["code"] = code, ["reason"] = "a wider roller was fitted" })];

    private async Task<Fault> RefusedAsync(Draft draft, string code, string pointer = "#/typedIn/value") =>
        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/adoptions", draft))).RefusedAsync(422, pointer, code);

    private async Task RefusedAsync(Draft draft, params (string? Pointer, string Code)[] faults) =>
        Assert.Equal(
            faults,
            (await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/adoptions", draft))).ProblemAsync(422)).Faults.Select(
                fault => (fault.Pointer, fault.Code)
            )
        );
}
