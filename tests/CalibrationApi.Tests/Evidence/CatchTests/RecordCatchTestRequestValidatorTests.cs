using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.CatchTests;

/// <summary>A catch test that breaks a rule is refused at the member that breaks it, and leaves nothing behind.</summary>
public sealed class RecordCatchTestRequestValidatorTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/machine")]
    [InlineData("/meter")]
    [InlineData("/element")]
    [InlineData("/product")]
    [InlineData("/scale")]
    [InlineData("/occurredAt")]
    [InlineData("/recordedBy")]
    [InlineData("/catches")]
    public async Task Record_WithoutAMemberItNeeds_IsRefused(string member)
    {
        var farm = await Farm.CreateAsync(service);

        await RefusedAsync(farm.CatchTest.Without(member), "#" + member, "member-missing");
    }

    [Theory]
    [InlineData("/catches/1/tare", """{ "value": 20, "unit": "kg" }""", "tare-above-gross")]
    [InlineData("/catches/1/revolutions", """{ "value": 0, "unit": "rev" }""", "revolutions-not-positive")]
    [InlineData("/catches/1/gross", """{ "value": 18 }""", "unit-missing")]
    [InlineData("/catches/1/gross", """{ "value": 18, "unit": "stone" }""", "unit-unknown")]
    [InlineData("/catches/1/gross", """{ "value": 18, "unit": "ton" }""", "unit-ambiguous")]
    [InlineData("/catches/1/gross", """{ "value": 18, "unit": "m" }""", "unit-wrong-dimension")]
    [InlineData("/catches", "[]", "too-few")]
    [InlineData("/tareReading", "\"none\"", "word-unknown")]
    [InlineData("/occurredAt", "\"yesterday\"", "time-wrong")]
    [InlineData("/setting", "\" \"", "text-wrong")]
    [InlineData("/conditions", """{ "slope": { "value": 200, "unit": "%" } }""", "number-out-of-range")]
    [InlineData("/conditions", """{ "airTemperature": { "value": 300, "unit": "degC" } }""", "number-out-of-range")]
    [InlineData("/conditions", """{ "airTemperature": { "value": 20, "unit": "kPa" } }""", "unit-wrong-dimension")]
    [InlineData("/conditions", """{ "tankPressure": { "value": -1, "unit": "kPa" } }""", "number-out-of-range")]
    public async Task Record_MemberThatBreaksARule_IsRefusedThere(string pointer, string json, string code)
    {
        var farm = await Farm.CreateAsync(service);

        var problem = await (
            await service.WithoutTraceAsync(() => service.PostAsync("/v1/catch-tests", farm.CatchTest.With(pointer, Draft.Json(json))))
        ).ProblemAsync(422);

        Assert.StartsWith("#" + pointer, problem.Only().Pointer, StringComparison.Ordinal);
        Assert.Equal(code, problem.Only().Code);
    }

    [Theory]
    [InlineData("/verdict", "\"keep\"")]
    [InlineData("/receivedAt", "\"2026-04-18T06:40:00Z\"")]
    [InlineData("/evaluation", "{}")]
    [InlineData("/supersedes/by", "\"x\"")]
    [InlineData("/conditions/wind", "1")]
    public async Task Record_MemberThatIsNotTheSendersToSet_IsUnreadable(string pointer, string json)
    {
        var farm = await Farm.CreateAsync(service);
        var draft = farm
            .CatchTest.With("/supersedes", new JsonObject())
            .With("/conditions", new JsonObject())
            .With(pointer, Draft.Json(json));

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/catch-tests", draft))).RefusedAsync(
            400,
            "#" + pointer,
            "member-unknown"
        );
    }

    // What only the record can give is told at the member that names the record, with what to do there.
    [Theory]
    [InlineData(
        """{ "gross": { "value": 18.7, "unit": "kg" }, "tare": { "value": 1.62, "unit": "kg" }, "pulses": 16920 }""",
        "pulses per revolution"
    )]
    [InlineData(
        """{ "gross": { "value": 18.7, "unit": "kg" }, "tare": { "value": 1.62, "unit": "kg" }, "turns": { "value": 47, "unit": "rev" } }""",
        "meter revolutions per turn"
    )]
    public async Task Record_CountedInAWayThatTheMeterDoesNotSay_IsRefusedAtTheMeter(string one, string missing)
    {
        var farm = await Farm.CreateAsync(service);

        var fault = await RefusedAsync(farm.CatchTest.With("/catches", new JsonArray(Draft.Json(one))), "#/meter", "member-missing");

        Assert.Contains(missing, fault.Detail, StringComparison.Ordinal);
        Assert.Contains("machine", fault.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Record_VolumeControllerWithoutADensity_IsRefusedAtTheProduct()
    {
        var farm = await Farm.CreateAsync(service, machine =>
            machine.With("/meters/0/controllerEntry", Draft.Json("""{ "form": "volume-per-revolution", "unit": "L", "decimals": 3 }"""))
        );
        var product = await service.CreateAsync("/v1/products", Farm.ProductDraft.Without("/bulkDensity"));

        var fault = await RefusedAsync(farm.CatchTest.With("/product", product).Without("/lot"), "#/product", "density-missing");

        Assert.Contains("bulk density", fault.Detail, StringComparison.Ordinal);
    }

    // What the test itself can give stays where it is given.
    [Fact]
    public async Task Record_RunTimeWithoutAMeterSpeed_IsRefusedAtTheMeterSpeed()
    {
        var farm = await Farm.CreateAsync(service);
        var one = Draft.Json("""{ "net": { "value": 17, "unit": "kg" }, "runTime": { "value": 80, "unit": "s" } }""");

        await RefusedAsync(farm.CatchTest.With("/catches", new JsonArray(one)), "#/meterSpeed", "member-missing");
    }

    private async Task<Fault> RefusedAsync(Draft draft, string pointer, string code) =>
        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/catch-tests", draft))).RefusedAsync(422, pointer, code);
}
