using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.FieldSetUps;

/// <summary>The set-up of a field: each part that of its own evaluation, what is open, what stands in the way and what leads.</summary>
public sealed class FieldSetUpEvaluationTests
{
    [Fact]
    public void SetUp_EverythingKnown_IsReady()
    {
        var setUp = Planted.Field(Planted.Front).SetUp();

        Assert.Equal(SetUpVerdict.Ready, setUp.Verdict);
        Assert.Equal("Every meter has its rate, its value and room for its speed. Go on with the catch plan.", setUp.Headline.InMetric());
        Assert.Null(setUp.HeadlineAbout);
    }

    [Fact]
    public void MeterSpeed_OfAMeter_IsThatOfItsOwnEvaluation()
    {
        var element = Planted.Front.Elements[0];
        var asked = MeterSpeedEvaluation.Evaluate(
            new MeterSpeedQuestion
            {
                CoveredWidth = new Length(9),
                WorkingWidth = new Length(9),
                Area = new Area(480_000),
                Rates = [Planted.PerHectare(90)],
                GroundSpeeds = [new Speed(2.5)],
                Elements = [new MeteringElement("coarse", DeliveryCurve.Constant(new MassPerRevolution(0.342)), element.Limits)],
            }
        );

        var found = Planted.Field(Planted.Front).SetUp().Meters[0].MeterSpeed!;

        Assert.Equal(asked.Headline.InMetric(), found.Headline.InMetric());
        Assert.Equal(asked.Elements[0].Corners, found.Elements[0].Corners);
        Assert.Equal(asked.Capacity, found.Capacity);
    }

    [Fact]
    public void SetUp_NothingKnownOfTheElementFitted_IsOpen()
    {
        var setUp = Planted.Field(Planted.Front with { Elements = [new ElementToSetUp("coarse", MeterSpeedLimits.None)] }).SetUp();

        var open = Assert.Single(setUp.Missing);
        Assert.Equal((OpenKind.MissingValue, "meters/0/startValue"), (open.Kind, open.Member));
        Assert.Null(setUp.Meters[0].MeterSpeed);
        Assert.StartsWith("One thing is still missing: No value is in force", setUp.Headline.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void SetUp_FertilizerThatTheNutrientsDoNotNeed_NeedsNoValueAndLaysNothingWithTheSeed()
    {
        var off = Planted.Rear with { StartValue = null, WithSeed = true };

        var setUp = (Planted.Field(Planted.Front, off) with { SeedRow = Planted.Wheat }).Wanting(20, there: 30).SetUp();

        Assert.Equal(SetUpVerdict.Ready, setUp.Verdict);
        Assert.Null(setUp.SeedRow);
        Assert.Null(setUp.Meters[1].MeterSpeed);
    }

    // A rate out of reach comes first, then what kills seed, then a meter that turns too slowly; a field has one of either.
    [Theory]
    [InlineData(400, "front: coarse: 400 kg/ha at 9 km/h takes 157.9 rpm, above the highest 90.0 rpm", SetUpPartKind.MeterSpeed)]
    [InlineData(1, "Above the published limit for wheat", SetUpPartKind.SeedRow)]
    public void Headline_SeveralThingsInTheWay_LeadsWithTheWorstAndCountsTheOthers(double rate, string worst, SetUpPartKind about)
    {
        var field = Planted.Field(
            Planted.Front with
            {
                TargetRate = Planted.PerHectare(rate),
            },
            Planted.Rear with
            {
                WithSeed = true,
                StartValue = null,
            }
        );

        var setUp = (field with { SeedRow = Planted.Wheat }).Wanting(46).SetUp();

        Assert.Equal(2, setUp.Obstacles.Count);
        Assert.Equal(about, setUp.HeadlineAbout!.Value.Kind);
        Assert.StartsWith(worst, setUp.Headline.InMetric(), StringComparison.Ordinal);
        Assert.EndsWith(
            "1 thing is more in the way, and 1 thing is still missing; see obstacles and missing.",
            setUp.Headline.InMetric(),
            StringComparison.Ordinal
        );
    }

    // The nearer one to its window is less of a hindrance.
    [Fact]
    public void InTheWay_TwoMetersOutOfReach_TheFartherOneLeads()
    {
        var near = Planted.Front with { TargetRate = Planted.PerHectare(240) };
        var far = Planted.Front with { Position = "rear", TargetRate = Planted.PerHectare(400) };

        var setUp = Planted.Field(near, far).SetUp();

        Assert.Equal(["rear", "front"], setUp.Obstacles.Select(obstacle => obstacle.Meter));
        Assert.Equal(
            [new SetUpPart(SetUpPartKind.MeterSpeed, 1), new SetUpPart(SetUpPartKind.MeterSpeed, 0)],
            setUp.Obstacles.Select(obstacle => obstacle.About)
        );
        Assert.EndsWith("1 thing is more in the way; see obstacles.", setUp.Headline.InMetric(), StringComparison.Ordinal);
    }

    // Another element of the same meter, whose own fault comes first, and whose name begins alike.
    [Fact]
    public void InTheWay_ElementNamedLikeTheBeginningOfAnother_TellsItsOwnFault()
    {
        var coarse = Planted.Front.Elements[0];
        var wide = coarse with { Name = "coarse wide", InForce = new ElementInForce(new MassPerRevolution(50)) };

        var setUp = Planted.Field(Planted.Front with { Elements = [wide, coarse], TargetRate = Planted.PerHectare(400) }).SetUp();

        Assert.StartsWith("coarse: 400 kg/ha at 9 km/h takes", Assert.Single(setUp.Obstacles).Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void NewLot_AnotherLotThanBehindTheValue_SaysToTestFirst()
    {
        var element = Planted.Front.Elements[0] with
        {
            InForce = new ElementInForce(new MassPerRevolution(0.342), null, new SeedLot { Treatment = "none" }),
        };

        var setUp = Planted.Field(Planted.Front with { Elements = [element] }).SetUp();

        Assert.Equal(LotVerdict.TestNow, setUp.Meters[0].NewLot!.Verdict);
        Assert.Equal(SetUpPartKind.NewLot, Assert.Single(setUp.Obstacles).About.Kind);
        Assert.Contains(setUp.Cautions, caution => caution.Code == CautionCodes.TreatedSeed);
        Assert.Null(Planted.Field(Planted.Front).SetUp().Meters[0].NewLot);
    }

    [Theory]
    [InlineData(3400, 3000, true)]
    [InlineData(3900, 3000, false)]
    [InlineData(3400, 4300, false)]
    public void Fan_ProductsThatStateFanSpeeds_StandsWhereAllOfThemMay(double planned, double least, bool isClear)
    {
        var light = Planted.Barley with { FanSpeeds = new(Planned.Rpm(least), Planned.Rpm(3800)) };
        var heavy = Planted.Urea with { FanSpeeds = new(Planned.Rpm(2900), Planned.Rpm(4200)) };
        var field = Planted.Field(
            Planted.Front with
            {
                Product = light,
            },
            Planted.Rear with
            {
                Product = heavy,
                TargetRate = Planted.PerHectare(60),
            }
        );

        var setUp = (field with { FanSpeed = Planned.Rpm(planned) }).SetUp();

        Assert.Equal(isClear ? SetUpVerdict.Ready : SetUpVerdict.Blocked, setUp.Verdict);
        Assert.Equal(2, setUp.Fan!.Loads[0].Products.Count);
        if (!isClear)
            Assert.Same(setUp.Fan.Headline, Assert.Single(setUp.Obstacles).Detail);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Fan_AsLongAsNoMeterCanBeSetUp_IsNotLookedAt(bool isKnown)
    {
        var meter = Planted.Front with { Product = Planted.Barley with { FanSpeeds = new(Planned.Rpm(3000), null) } };
        var unknown = meter with { Elements = [new ElementToSetUp("coarse", MeterSpeedLimits.None)] };

        var fan = Planted.Field(isKnown ? meter : unknown).SetUp().Fan;

        Assert.Equal(isKnown ? "Keep the fan at 3000 rpm or more." : null, fan?.Headline.InMetric());
    }

    [Fact]
    public void Fan_NoProductThatIsPutDownStatesItsSpeeds_IsNotAsked()
    {
        var off = Planted.Rear with { Product = Planted.Urea with { FanSpeeds = new(Planned.Rpm(3000), null) } };

        Assert.Null(Planted.Field(Planted.Front, off).Wanting(20, there: 30).SetUp().Fan);
    }

    [Fact]
    public void Open_NutrientsThatNoProductBrings_AreNamed() =>
        Assert.Equal("nutrients", Assert.Single(Planted.Field(Planted.Front).Wanting(50).SetUp().Missing).Member);

    [Fact]
    public void Open_ProductsToChooseFromWithPricesOfTwoCurrencies_SaysThatTheCostIsNotLeast()
    {
        var one = Planted.Rear with { Product = Planted.Urea with { Price = new ProductPrice(0.4, "EUR") } };
        var other = Planted.Rear with
        {
            Position = "side",
            Product = Planted.Fertilizer("nitrate", NutrientForm.N, 0.33) with { Price = new ProductPrice(0.4, "CZK") },
        };

        var setUp = Planted.Field(one, other).Wanting(46).SetUp();

        Assert.Contains(
            "least total mass",
            Assert.Single(setUp.Missing, open => open.Member == "nutrients").Detail.InMetric(),
            StringComparison.Ordinal
        );
        Assert.Equal(TargetsVerdict.Met, setUp.Nutrients!.Verdict);
    }

    [Fact]
    public void InTheWay_NutrientsThatCannotBeMet_TellsTheHeadlineOfTheirs()
    {
        // All the nitrogen comes from a product whose rate is fixed below what is wanted.
        var setUp = Planted.Field(Planted.Rear with { TargetRate = Planted.PerHectare(10) }).Wanting(46).SetUp();

        Assert.Same(setUp.Nutrients!.Headline, Assert.Single(setUp.Obstacles).Detail);
    }

    [Fact]
    public void Open_RecordsAtOdds_AreCountedInTheHeadline()
    {
        var retired = new OpenPoint(OpenKind.RecordAtOdds, "meters/0/lot", $"This record is retired.");

        var setUp = (Planted.Field(Planted.Front) with { AtOdds = [retired] }).SetUp();

        Assert.Equal([retired], setUp.Missing);
        Assert.Equal("One thing is still missing: This record is retired.", setUp.Headline.InMetric());
    }
}
