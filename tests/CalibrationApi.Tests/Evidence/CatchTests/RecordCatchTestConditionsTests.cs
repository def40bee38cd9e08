using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Evidence.CatchTests;

/// <summary>Conditions of a test against those stated for sowing in its plan.</summary>
public sealed class RecordCatchTestConditionsTests(RecordService service) : IClassFixture<RecordService>
{
    private const string Sowing = """
        {
          "tankLevel": { "value": 60, "unit": "%" }, "tankPressure": { "value": 3, "unit": "kPa" }, "slope": { "value": 0, "unit": "%" },
          "productMoisture": { "value": 13, "unit": "%" }, "airTemperature": { "value": 12, "unit": "degC" }, "fanSpeed": { "value": 4000, "unit": "rpm" }
        }
        """;

    [Fact]
    public async Task Record_Conditions_ReadBackAsEntered()
    {
        var (farm, plan) = await PrepareAsync();
        var conditions = Draft.Json(
            """{ "tankLevel": { "value": 0.5, "unit": "1" }, "tankPressure": { "value": 12, "unit": "inH2O" }, "airTemperature": { "value": 54, "unit": "degF" } }"""
        );

        var test = (await farm.TestAsync(test => test.With("/plan", plan).With("/conditions", conditions))).Body;

        Assert.True(JsonNode.DeepEquals(conditions, test.At("/entered/conditions")));
    }

    // The same conditions in other units. 1 psi is 6.894757 kPa, 12 degC is 53.6 degF (NIST SP 811, B.8 and B.9).
    [Fact]
    public async Task Record_ConditionsAsStatedForSowing_AreNoFinding()
    {
        var (farm, plan) = await PrepareAsync();
        var us = """
            {
              "tankLevel": { "value": 0.6, "unit": "1" }, "tankPressure": { "value": 0.4351, "unit": "psi" }, "slope": { "value": 0, "unit": "%" },
              "productMoisture": { "value": 13, "unit": "%" }, "airTemperature": { "value": 53.6, "unit": "degF" }, "fanSpeed": { "value": 66.67, "unit": "rev/s" }
            }
            """;

        foreach (var conditions in (string[])[Sowing, us])
            Assert.DoesNotContain(
                "conditions-differ",
                (await farm.TestAsync(test => test.With("/plan", plan).With("/conditions", Draft.Json(conditions)))).Body.Codes(
                    "/evaluation/findings"
                )
            );
    }

    [Theory]
    [InlineData("tankLevel", 10, "%", "tank level")]
    [InlineData("tankPressure", 6, "kPa", "tank pressure")]
    [InlineData("slope", 8, "%", "slope")]
    [InlineData("productMoisture", 17, "%", "moisture")]
    [InlineData("airTemperature", 95, "degF", "temperature")]
    [InlineData("fanSpeed", 3000, "rpm", "fan speed")]
    public async Task Record_OneConditionFarFromSowing_IsAFindingInTheUnitsEntered(string member, double value, string unit, string name)
    {
        var (farm, plan) = await PrepareAsync();

        var test = (
            await farm.TestAsync(test =>
                test.With("/plan", plan).With("/conditions", Draft.Json(Sowing)).With($"/conditions/{member}", Draft.Quantity(value, unit))
            )
        ).Body;

        var finding = Assert.Single(test.List("/evaluation/findings"), one => one!["code"]!.GetValue<string>() == "conditions-differ")!;
        Assert.Equal("warning", finding["severity"]!.GetValue<string>());
        Assert.Contains(
            $"But the {finding["detail"]!.GetValue<string>()["The ".Length..].Split(" in the test", 2)[0]} was not as in sowing",
            test.Word("/evaluation/headline"),
            StringComparison.Ordinal
        );
        Assert.Contains(name, finding["detail"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains(
            $"({value.ToString(System.Globalization.CultureInfo.InvariantCulture)} {unit})",
            finding["detail"]!.GetValue<string>(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Record_NothingStatedOnOneSide_IsNoFinding()
    {
        var (farm, plan) = await PrepareAsync();
        var bare = await service.CreateAsync("/v1/plans", farm.PlanDraft);

        Assert.DoesNotContain(
            "conditions-differ",
            (await farm.TestAsync(test => test.With("/plan", plan))).Body.Codes("/evaluation/findings")
        );
        Assert.DoesNotContain(
            "conditions-differ",
            (await farm.TestAsync(test => test.With("/plan", bare).With("/conditions", Draft.Json(Sowing)))).Body.Codes(
                "/evaluation/findings"
            )
        );
        Assert.DoesNotContain(
            "conditions-differ",
            (await farm.TestAsync(test => test.With("/conditions", Draft.Json(Sowing)))).Body.Codes("/evaluation/findings")
        );
    }

    [Fact]
    public async Task Plan_SowingConditions_ReadBackAsEnteredAndInUsUnits()
    {
        var (_, plan) = await PrepareAsync();

        var entered = (await service.GetAsync($"/v1/plans/{plan}")).Expect(200);
        var us = (await service.GetAsync($"/v1/plans/{plan}?units=us")).Expect(200);

        Assert.True(JsonNode.DeepEquals(Draft.Json(Sowing), entered.Json["sowingConditions"]));
        // 12 degC is 53.6 degF; 3 kPa is 12.04 inches of water of 249.08891 Pa (NIST SP 811, B.8 and B.9).
        Assert.Equal("degF", us.Body.Word("/sowingConditions/airTemperature/unit"));
        Assert.Equal(53.6, us.Body.Number("/sowingConditions/airTemperature/value"), 1e-9);
        Assert.Equal("inH2O", us.Body.Word("/sowingConditions/tankPressure/unit"));
        Assert.Equal(3000 / 249.08891, us.Body.Number("/sowingConditions/tankPressure/value"), 1e-6);
    }

    private async Task<(Farm Farm, string Plan)> PrepareAsync()
    {
        var farm = await Farm.CreateAsync(service);
        return (farm, await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/sowingConditions", Draft.Json(Sowing))));
    }
}
