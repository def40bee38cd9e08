using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Calculations.CatchTests;

/// <summary>What element, container, scale and conditions say about a test, stated in a question or known from records.</summary>
public sealed class PhysicalLimitsTests(RecordService service) : IClassFixture<RecordService>
{
    // 0.03 L of 660 kg/m3 hold 0.0437 lb.
    [Fact]
    public async Task Evaluate_CanolaOnASmallElement_IsNotAdopted()
    {
        var question = Canola.With(
            "/fittedElement",
            Draft.Json("""{ "name": "small seed", "displacementPerRevolution": { "value": 0.03, "unit": "L" } }""")
        );

        var answer = (await service.PostAsync("/v1/calculations/catch-test", question)).Expect(200).Body;

        Assert.Equal("investigate", answer.Word("/verdict"));
        Assert.Equal("more-than-the-element-holds", answer.Word("/reasons/0/code"));
        Assert.StartsWith(
            "Do not use this test. The measured value, 0.132 lb/rev, is more than the element small seed can deliver: full it holds 0.04365 lb/rev",
            answer.Word("/headline"),
            StringComparison.Ordinal
        );
        var finding = Assert.Single(answer.List("/findings"), one => one!["code"]!.GetValue<string>() == "more-than-the-element-holds")!;
        Assert.Equal("stop", finding["severity"]!.GetValue<string>());
        Assert.False(answer.Has("/enter"));
        Assert.Equal("adopt", (await service.PostAsync("/v1/calculations/catch-test", Canola)).Expect(200).Body.Word("/verdict"));
    }

    [Theory]
    [InlineData("/fittedElement", """{ "kind": "closed-pockets" }""", "#/fittedElement/displacementPerRevolution", "member-missing")]
    [InlineData(
        "/fittedElement",
        """{ "kind": "pockets", "displacementPerRevolution": { "value": 0.03, "unit": "L" } }""",
        "#/fittedElement/kind",
        "word-unknown"
    )]
    [InlineData("/conditions", """{ "tankLevel": { "value": 120, "unit": "%" } }""", "#/conditions/tankLevel", "number-out-of-range")]
    public async Task Evaluate_ElementOrConditionsThatCannotBe_AreRefused(string member, string json, string pointer, string code) =>
        await (
            await service.WithoutTraceAsync(() => service.PostAsync("/v1/calculations/catch-test", Canola.With(member, Draft.Json(json))))
        ).RefusedAsync(422, pointer, code);

    [Fact]
    public async Task Evaluate_TankNearlyEmpty_SaysSoInTheHeadline()
    {
        var answer = (
            await service.PostAsync(
                "/v1/calculations/catch-test",
                Canola.With("/conditions", Draft.Json("""{ "tankLevel": { "value": 4, "unit": "%" } }"""))
            )
        )
            .Expect(200)
            .Body;

        Assert.EndsWith(
            "But the tank was nearly empty: test again with more product in it.",
            answer.Word("/headline"),
            StringComparison.Ordinal
        );
        Assert.Contains("conditions-differ", answer.Codes("/findings"));
    }

    // 0.36 kg per revolution from 0.6 L of 0.62 kg/L is usual; from 0.15 L it cannot be.
    [Fact]
    public async Task Record_MoreThanTheElementHolds_IsInvestigated()
    {
        var farm = await Farm.CreateAsync(service, machine =>
            machine.With("/meters/0/elements/0/displacementPerRevolution", Draft.Quantity(0.15, "L"))
        );
        var test = (await farm.TestAsync()).Body;

        Assert.Equal("investigate", test.Word("/evaluation/verdict"));
        Assert.Equal("coarse", test.Word("/resolved/fittedElement/name"));
    }

    [Fact]
    public async Task Record_NothingElseKnown_StartsFromTheContentOfTheElement()
    {
        var farm = await Farm.CreateAsync(service);

        var test = (await farm.TestAsync()).Body;

        Assert.Equal(("adopt", "start-value"), (test.Word("/evaluation/verdict"), test.Word("/evaluation/changeFrom")));
        // 0.9 x 0.6 L x 0.62 kg/L
        Assert.Equal(
            0.3348,
            test.List("/evaluation/assumptions").Single(one => one!["name"]!.GetValue<string>() == "startValue")!["value"]![
                "value"
            ]!.GetValue<double>(),
            1e-12
        );
        await farm.AdoptAsync();
        Assert.Equal("value-in-force", (await farm.TestAsync()).Body.Word("/evaluation/changeFrom"));
    }

    // 30 L of 62 kg/hL are 18.6 kg, 22.3 kg heaped up.
    [Fact]
    public async Task Record_MoreThanTheContainerHolds_IsInvestigated()
    {
        var farm = await Farm.CreateAsync(service);

        var test = (
            await farm.TestAsync(test =>
                test.With("/container", farm.Container)
                    .With("/catches", new JsonArray(Farm.Catch(1.62 + 29, 80), Farm.Catch(1.62 + 29.1, 80)))
            )
        ).Body;

        Assert.Equal(
            ("investigate", "more-than-the-container-holds"),
            (test.Word("/evaluation/verdict"), test.Word("/evaluation/reasons/0/code"))
        );
    }

    [Fact]
    public async Task Record_LoadBeyondTheScale_IsInvestigated()
    {
        var farm = await Farm.CreateAsync(service);

        var test = (await farm.TestAsync(test => test.With("/catches", new JsonArray(Farm.Catch(52, 139), Farm.Catch(52.1, 139))))).Body;

        Assert.Equal(("investigate", "load-beyond-capacity"), (test.Word("/evaluation/verdict"), test.Word("/evaluation/reasons/0/code")));
    }

    // Wheat at 0.60 kg with 780 kg/m3 on the same element lets 0.477 kg be expected of barley at 620.
    [Fact]
    public async Task Record_UnlikeAnotherProductOnTheElement_IsWarnedOf()
    {
        var farm = await Farm.CreateAsync(service, machine => machine.Without("/meters/0/elements/0/displacementPerRevolution"));
        var wheat = await service.CreateAsync(
            "/v1/products",
            Farm.ProductDraft.With("/name", "winter wheat").With("/bulkDensity", Draft.Quantity(78, "kg/hL"))
        );
        await farm.AdoptAsync(adoption =>
            adoption.With("/product", wheat).Without("/lot").With("/typedIn", Draft.Quantity(0.60, "kg/rev"))
        );

        var test = (await farm.TestAsync()).Body;

        Assert.Equal(78, test.Number("/resolved/otherProducts/0/bulkDensity/value"));
        Assert.Contains("unlike-other-products", test.Codes("/evaluation/findings"));
    }

    [Fact]
    public async Task Record_OnAScaleThatFailedItsCheck_IsToBeRepeatedOnAnother()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.CheckScaleAsync(check => check.With("/readings/0", Farm.Reading(20, 20.6)));

        var test = (await farm.TestAsync()).Body;

        Assert.Equal("repeat", test.Word("/evaluation/verdict"));
        Assert.StartsWith(
            "Catch again on a good scale: this one failed its last check.",
            test.Word("/evaluation/headline"),
            StringComparison.Ordinal
        );
        Assert.True(test.Flag("/usedHistory/scaleCheck/failed"));
        Assert.True(test.Flag("/resolved/scale/knownError/checkFailed"));
    }

    [Fact]
    public async Task Plan_ValueThatTheElementCannotDeliver_IsSaidInTheCatchPlan()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/meters/0/startValue", Draft.Quantity(0.9, "kg/rev")));

        var answer = (await service.GetAsync($"/v1/plans/{plan}/catch-plan")).Expect(200).Body;

        var finding = Assert.Single(answer.List("/findings"), one => one!["code"]!.GetValue<string>() == "more-than-the-element-holds")!;
        Assert.Equal(("stop", "front"), (finding["severity"]!.GetValue<string>(), finding["meter"]!.GetValue<string>()));
    }

    [Fact]
    public async Task MeterSpeed_ValueThatTheElementCannotDeliver_IsSaid()
    {
        var question = Draft.Of(
            """
            {
              "coveredWidth": { "value": 9, "unit": "m" }, "rates": [ { "value": 90, "unit": "kg/ha" } ], "groundSpeeds": [ { "value": 9, "unit": "km/h" } ],
              "bulkDensity": { "value": 62, "unit": "kg/hL" },
              "elements": [ { "name": "coarse", "kind": "closed-pockets", "displacementPerRevolution": { "value": 0.6, "unit": "L" }, "massPerRevolution": { "value": 0.5, "unit": "kg/rev" } } ]
            }
            """
        );

        Assert.Contains(
            "more-than-the-element-holds",
            (await service.PostAsync("/v1/calculations/meter-speed", question)).Expect(200).Body.Codes("/findings")
        );
        Assert.Empty(
            (
                await service.PostAsync(
                    "/v1/calculations/meter-speed",
                    question.With("/elements/0/massPerRevolution", Draft.Quantity(0.34, "kg/rev"))
                )
            )
                .Expect(200)
                .Body.List("/findings")
        );
    }

    private static Draft Canola =>
        Draft.Of(
            """
            {
              "product": { "name": "canola", "material": "small-seed", "bulkDensity": { "value": 660, "unit": "kg/m3" } },
              "scale": { "division": { "value": 0.01, "unit": "lb" } },
              "catches": [
                { "net": { "value": 19.8, "unit": "lb" }, "revolutions": { "value": 150, "unit": "rev" } },
                { "net": { "value": 19.8, "unit": "lb" }, "revolutions": { "value": 150, "unit": "rev" } }
              ]
            }
            """
        );
}
