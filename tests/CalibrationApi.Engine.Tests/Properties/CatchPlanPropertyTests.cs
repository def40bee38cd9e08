using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Tests.CatchPlans;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace CalibrationApi.Engine.Tests.Properties;

/// <summary>A plan in whole numbers of small units, so that it can be put together in any unit.</summary>
public sealed record RandomPlan(int CentimetresPerSecond, bool SharedShaft, RandomMeter[] Meters, string[] Points)
{
    public override string ToString() =>
        $"{CentimetresPerSecond / 100.0} m/s, shared {SharedShaft}, {Points.Length} points: {string.Join(" ", (object[])Meters)}";

    public CatchPlanQuestion In(Unit mass, Unit perRevolution, Unit rate, Unit speed)
    {
        static double There(Unit unit, double value) => unit.Canonical(unit.FromCanonical(value));
        return new CatchPlanQuestion
        {
            GroundSpeed = new Speed(There(speed, CentimetresPerSecond / 100.0)),
            Drive = SharedShaft ? MeterDrive.SharedShaft : MeterDrive.Separate,
            Scale = Given.Platform with { Division = new Mass(There(mass, 0.02)), Capacity = new Mass(There(mass, 50)) },
            Container = new Container(new Volume(0.03), new Mass(There(mass, 1.62))),
            LiftLimit = new Mass(There(mass, 25)),
            LongestRun = new Duration(300),
            DisturbedPoints = [.. Points.Select(point => new DisturbedPoint(point, null, null))],
            Meters =
            [
                .. Meters.Select(
                    (meter, i) =>
                        new PlannedMeter
                        {
                            Name = $"meter {i}",
                            Product = "product",
                            CoveredWidth = new Length(meter.Centimetres / 100.0),
                            TargetRate = new MassPerArea(There(rate, meter.GramsPerHectare / 1e7)),
                            BulkDensity = new BulkDensity(meter.Density),
                            Value = new ReferenceValue(
                                new MassPerRevolution(There(perRevolution, meter.MilligramsPerRevolution / 1e6)),
                                ReferenceKind.ValueInForce,
                                0.012
                            ),
                            SpeedLimits = new MeterSpeedLimits(Planned.Rpm(4), Planned.Rpm(90)),
                            Repeatability = 0.0113,
                        }
                ),
            ],
        };
    }

    public CatchPlanQuestion InKilograms => In(UnitTable.Get("kg"), UnitTable.Get("kg/rev"), UnitTable.Get("kg/ha"), UnitTable.Get("m/s"));
}

public sealed record RandomMeter(int Centimetres, int GramsPerHectare, int Density, int MilligramsPerRevolution);

public static class RandomPlans
{
    public static Arbitrary<RandomPlan> Plans() =>
        Arb.From(
            from speed in Gen.Choose(80, 450)
            from shared in Gen.Elements(true, false)
            from count in Gen.Choose(1, 4)
            from meters in Gen.ArrayOf(
                from width in Gen.Choose(300, 1800)
                from rate in Gen.Choose(30_000, 300_000)
                from density in Gen.Choose(400, 1100)
                from value in Gen.Choose(12_345, 1_234_567)
                select new RandomMeter(width, rate, density, value),
                count
            )
            from points in Gen.Choose(0, 3)
            select new RandomPlan(speed, shared, meters, [.. Enumerable.Range(1, points).Select(i => $"point {i}")])
        );
}

/// <summary>What must hold for every catch plan.</summary>
[Properties(Arbitrary = [typeof(RandomPlans)], MaxTest = 200, Replay = "20260120,1")]
public sealed class CatchPlanPropertyTests
{
    // t = m / (k n) and t = m / (R W v): k cancels, a cross-check of the whole chain.
    [Property]
    public void RunTime_FromTheMeterAndFromTheField_Agree(RandomPlan random)
    {
        foreach (var meter in random.InKilograms.Evaluated().Meters)
        {
            var byMeter =
                meter.CatchMass.Kilograms / (meter.Meter.Value.Value.KilogramsPerRevolution * meter.MeterSpeed.RevolutionsPerSecond);
            var byField =
                meter.CatchMass.Kilograms
                / (meter.Meter.TargetRate.KilogramsPerSquareMetre * meter.Meter.CoveredWidth.Metres * meter.SimulatedSpeed.MetresPerSecond);
            NearlyEqual.Assert(byMeter, byField);
            NearlyEqual.Assert(byMeter, meter.RunTime.Seconds);
        }
    }

    [Property]
    public void Steps_AnyMachine_AreAcyclicWithExistingDependencies(RandomPlan random)
    {
        var steps = random.InKilograms.Evaluated().Steps;

        Assert.Distinct(steps.Select(step => step.Id));
        PlanStepsTests.AssertAcyclic(steps);
    }

    [Property]
    public void CatchMass_AnyMeter_RespectsEveryBound(RandomPlan random) =>
        Assert.All(random.InKilograms.Evaluated().Meters, meter =>
            Assert.All(meter.Bounds, bound => Assert.True(meter.CatchMass.Kilograms <= bound.Mass.Kilograms * (1 + 1e-9)))
        );

    // Whatever is asked, no plan turns a meter beyond its limits or leaves a short run without a word.
    [Property]
    public void SimulatedSpeed_AnyRun_KeepsEveryMeterInsideItsLimits(RandomPlan random)
    {
        var result = random.InKilograms.Evaluated();
        foreach (var meter in result.Meters)
        {
            Assert.True(meter.WithinLimits);
            Assert.Equal(
                meter.RunTime.Seconds < 20 * (1 - 1e-9),
                result.Findings.Any(finding => finding.Code == CatchPlanCodes.ShortRun && finding.Meter == meter.Meter.Name)
            );
            Assert.True(meter.CatchesForLongRun is null || meter.CatchesForLongRun * meter.RunTime.Seconds >= 20 * (1 - 1e-9));
        }
    }

    // Numbers as far out as the service takes them, limits and containers or none: a plan of finite numbers, or a refusal.
    [Fact]
    public void Evaluate_NumbersFarOut_AnswersFinitelyOrRefuses()
    {
        var random = new Random(20_260_301);
        double Far(double low, double high) => low * Math.Pow(high / low, random.NextDouble());
        var answered = 0;
        for (var i = 0; i < 3000; i++)
        {
            PlannedMeter Meter(int number) =>
                Planned.Meter($"meter {number}", "product", Far(0.01, 100_000), Far(1, 5000), Far(1e-6, 100)) with
                {
                    CoveredWidth = new Length(Far(0.01, 200)),
                    SpeedLimits = random.Next(3) switch
                    {
                        0 => MeterSpeedLimits.None,
                        1 => new MeterSpeedLimits(Planned.Rpm(Far(0.01, 100)), null),
                        _ => new MeterSpeedLimits(Planned.Rpm(Far(0.01, 50)), Planned.Rpm(Far(50, 100_000))),
                    },
                };
            var longest = Far(1, 86_400);
            var plan = Planned.Plan([.. Enumerable.Range(1, random.Next(1, 4)).Select(Meter)]) with
            {
                GroundSpeed = new Speed(Far(1e-4, 27)),
                Drive = random.Next(2) == 0 ? MeterDrive.Separate : MeterDrive.SharedShaft,
                Container = random.Next(3) == 0 ? null : new Container(new Volume(Far(1e-5, 10)), new Mass(Far(0.01, 100))),
                LongestRun = new Duration(longest),
                ShortestRun = random.Next(2) == 0 ? null : new Duration(Far(0.01, 1) * longest),
            };
            var outcome = CatchPlanEvaluation.Evaluate(plan);
            Assert.NotEqual(outcome.IsAnswered, outcome.Refusals.Count > 0);
            if (!outcome.IsAnswered)
                continue;
            answered++;
            Assert.All(outcome.Result.Meters, meter =>
            {
                Assert.True(meter.WithinLimits);
                foreach (
                    var number in (double[])
                        [
                            meter.SimulatedSpeed.MetresPerSecond,
                            meter.RunTime.Seconds,
                            meter.CatchMass.Kilograms,
                            meter.ExpectedPrecision.Fraction,
                            meter.MeterSpeed.RevolutionsPerSecond,
                        ]
                )
                    Assert.True(double.IsFinite(number) && number > 0, $"{i}: {number}");
            });
            Assert.DoesNotContain("NaN", outcome.Result.Headline.InMetric(), StringComparison.Ordinal);
        }

        Assert.True(answered > 300, $"Only {answered} plans were answered.");
    }

    [Property]
    public void StopOrder_AnyRun_NamesEveryMeterOnceInTheOrderOfTime(RandomPlan random)
    {
        var result = random.InKilograms.Evaluated();

        Assert.Equal(result.Meters.Select(meter => meter.Meter.Name).Order(), result.StopOrder.SelectMany(stop => stop.Meters).Order());
        var times = result.StopOrder.SelectMany(stop => stop.Times.Select(time => time.Seconds)).ToArray();
        if (!result.OneAfterTheOther)
            Assert.Equal(times.Order(), times);
    }

    [Property]
    public void Evaluate_SamePlanInOtherUnits_ChangesNothing(RandomPlan random)
    {
        var expected = random.InKilograms.Evaluated();

        foreach (var mass in UnitTable.Of(Dimension.Mass))
        {
            var actual = random.In(mass, UnitTable.Get("oz/rev"), UnitTable.Get("lb/ac"), UnitTable.Get("mi/h")).Evaluated();
            foreach (var (one, other) in expected.Meters.Zip(actual.Meters))
            {
                NearlyEqual.Assert(one.CatchMass.Kilograms, other.CatchMass.Kilograms);
                NearlyEqual.Assert(one.RunTime.Seconds, other.RunTime.Seconds);
                NearlyEqual.Assert(one.ExpectedPrecision.Fraction, other.ExpectedPrecision.Fraction);
                Assert.Equal(one.Catches, other.Catches);
                Assert.Equal(one.LimitedBy.Kind, other.LimitedBy.Kind);
                Assert.Equal(one.WithinLimits, other.WithinLimits);
            }
        }
    }
}
