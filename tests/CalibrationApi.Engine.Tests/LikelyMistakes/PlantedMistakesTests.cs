using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.LikelyMistakes;

/// <summary>Each kind of mistake, made on purpose, is found where it was made.</summary>
public sealed class PlantedMistakesTests
{
    private const double Pound = 0.45359237;
    private const double Tare = 1.6 / (Suspected.InForce * 47);

    private static readonly List<Case> Cases =
    [
        new(MistakeCodes.PoundsAsKilograms, null, Suspected.Net(1 / Pound, 1.01 / Pound)),
        new(MistakeCodes.PoundsAsKilograms, null, Suspected.Net(1 / Pound)),
        new(
            MistakeCodes.KilogramsAsPounds,
            null,
            Suspected.Net(Pound, 1.01 * Pound).Knowing(known => known with { EnteredInPounds = true })
        ),
        new(
            MistakeCodes.TareNotTakenOff,
            1,
            Given.Test(Given.Weighed(18.52, 1.6, 47), Given.Weighed(18.56, 0, 47), Given.Weighed(18.5, 1.6, 47)).InForce(Suspected.InForce)
        ),
        new(
            MistakeCodes.TareNotTakenOff,
            null,
            Suspected.Net(1.5, 1.51).Knowing(known => known with { ContainerTare = new Mass(0.5 * Suspected.InForce * 47) })
        ),
        new(MistakeCodes.TareTakenOffTwice, null, Given.Test(Given.Weighed(17, 1.6, 47), Given.Weighed(6, 1.6, 16.6)).InForce(17 / 47.0)),
        new(
            MistakeCodes.TareOfAnotherContainer,
            2,
            Suspected
                .Weighed(1, 1.01, 1.12)
                .Knowing(known =>
                    known with
                    {
                        OtherContainers = [new("tub", new Mass(1.6 + 0.12 * Suspected.InForce * 47)), new("bin", new Mass(1.6))],
                    }
                )
        ),
        new(MistakeCodes.DecimalSlip, 1, Suspected.Net(1, 10, 1.01)),
        new(MistakeCodes.DecimalSlip, 1, Suspected.Net(1, 10)),
        new(MistakeCodes.DecimalSlip, 1, Suspected.Net(1, 0.1, 1.01)),
        new(MistakeCodes.DecimalSlip, 0, Suspected.Net(100, 1, 1.01)),
        new(MistakeCodes.DecimalSlip, null, Suspected.Net(10, 10.1)),
        new(
            MistakeCodes.DecimalSlip,
            1,
            Given
                .Test(Given.Weighed(18.7, 1.62, 47), Given.Weighed(185.6, 1.62, 46.8), Given.Weighed(18.64, 1.62, 47))
                .InForce(Suspected.InForce)
        ),
        new(MistakeCodes.DecimalSlip, 1, Suspected.Net(1, 10, 1.01).WithoutReference()),
        new(MistakeCodes.CountDoubled, null, Suspected.Net(0.5, 0.505)),
        new(MistakeCodes.CountHalved, null, Suspected.Net(2, 2.01)),
        new(MistakeCodes.MeterNotPrimed, 0, Suspected.Net(0.7, 1, 1.01)),
        new(
            MistakeCodes.ContainerOverflowed,
            2,
            Suspected.Net(1, 1.01, 0.7).Knowing(known => known with { ContainerCapacity = new Mass(0.72 * Suspected.InForce * 47) })
        ),
        new(
            MistakeCodes.TankBridgedOrEmpty,
            2,
            Suspected.Net(1, 1.01, 0.03).Knowing(known => known with { ContainerCapacity = new Mass(30) })
        ),
        new(
            MistakeCodes.MeterIsolated,
            2,
            Suspected.Net(1, 1.01, 0.3).Knowing(known => known with { RuledOut = [MistakeCodes.TankBridgedOrEmpty] })
        ),
        new(MistakeCodes.CatchPointMissed, 2, Suspected.Net(1, 1.01, 0.75).Knowing(known => known with { CatchPoints = 4 })),
        new(
            MistakeCodes.AnotherElement,
            null,
            Suspected
                .Net(1.5, 1.51)
                .Knowing(known => known with { OtherElements = [Suspected.Other("coarse", 1.5), Suspected.Other("fine", 0.3)] })
        ),
        new(
            MistakeCodes.AnotherProduct,
            null,
            Suspected.Net(1.5, 1.51).Knowing(known => known with { OtherProducts = [Suspected.Other("lentils", 1.49)] })
        ),
        new(
            MistakeCodes.ValueInForceWrong,
            null,
            Suspected.Net(1.6, 1.61).Knowing(known => known with { RuledOut = [MistakeCodes.SomethingElse, MistakeCodes.TareNotTakenOff] })
        ),
        new(MistakeCodes.StartValueWrong, null, Suspected.Net(5, 5.05).StartingFrom(Suspected.InForce)),
        new(MistakeCodes.SomethingElse, 1, Suspected.Net(1, 1.6, 1.01).RulingOut(MistakeCodes.DigitWrong)),
        new(MistakeCodes.ContainerNotEmptied, null, Suspected.Net(1, 2.01, 2.99)),
        new(MistakeCodes.ContainerNotEmptied, null, Suspected.Net(1, 2.01)),
        new(MistakeCodes.ContainerNotEmptied, null, Suspected.Net(1, 2.01, 2.99, 4.02).WithoutReference()),
        new(MistakeCodes.ContainerNotEmptied, 2, Suspected.Net(1.03, 0.99, 2.01, 1.01).RulingOut(MistakeCodes.CountHalved)),
        new(
            MistakeCodes.CounterNotReset,
            null,
            Given.Test(Given.Net(16.9, 47), Given.Net(17, 94.1), Given.Net(16.8, 141)).InForce(Suspected.InForce)
        ),
        new(MistakeCodes.CounterNotReset, null, Given.Test(Given.Net(16.9, 47), Given.Net(17, 94.1)).InForce(Suspected.InForce)),
        new(
            MistakeCodes.ResidueInContainer,
            1,
            Suspected.Net(1, 1.12, 1.01).RulingOut(MistakeCodes.TareNotTakenOff, MistakeCodes.DigitWrong, MistakeCodes.SomethingElse)
        ),
        new(
            MistakeCodes.WindOrHand,
            2,
            Suspected
                .Net(1, 1.01, 0.86)
                .RulingOut(
                    MistakeCodes.ContainerOverflowed,
                    MistakeCodes.TankBridgedOrEmpty,
                    MistakeCodes.MeterIsolated,
                    MistakeCodes.CatchPointMissed,
                    MistakeCodes.DigitWrong,
                    MistakeCodes.SomethingElse
                )
        ),
        // 1 lb 9 oz, 2 lb 8 oz and 1 lb 15 oz.
        new(
            MistakeCodes.OuncesAsDecimals,
            null,
            Given
                .Test(Given.Net(1.9 * Pound, 1.97), Given.Net(2.8 * Pound, 3.15), Given.Net(1.15 * Pound, 2.44))
                .InForce(Suspected.InForce)
                .Knowing(_ => new() { EnteredInPounds = true })
        ),
        new(
            MistakeCodes.DigitWrong,
            1,
            Given.Test(Given.Net(16.95, 47), Given.Net(61.87, 47), Given.Net(17.02, 47)).InForce(Suspected.InForce)
        ),
        new(
            MistakeCodes.DigitWrong,
            2,
            Given.Test(Given.Net(16.95, 47), Given.Net(17.02, 47), Given.Net(16.87, 74)).InForce(Suspected.InForce)
        ),
        new(
            MistakeCodes.PulsesPerRevolutionWrong,
            null,
            Suspected
                .Net(1.6, 1.61)
                .Knowing(known => known with { CountedAs = CountSource.Pulses })
                .RulingOut(MistakeCodes.SomethingElse, MistakeCodes.TareNotTakenOff, MistakeCodes.ValueInForceWrong)
        ),
        new(
            MistakeCodes.TurnsOfAnotherShaft,
            null,
            Suspected.Net(0.31, 0.312).Knowing(known => known with { MeterRevolutionsPerTurn = 0.31, CountedAs = CountSource.Revolutions })
        ),
        new(
            MistakeCodes.TurnsOfAnotherShaft,
            null,
            Suspected
                .Net(1 / 0.31, 1.01 / 0.31)
                .Knowing(known => known with { MeterRevolutionsPerTurn = 0.31, CountedAs = CountSource.Turns })
        ),
        new(
            MistakeCodes.ValueInAnotherUnit,
            null,
            Suspected.Net(Pound, 1.01 * Pound).Knowing(known => known with { ReferenceInPounds = false })
        ),
        new(
            MistakeCodes.ValueInAnotherUnit,
            null,
            Suspected
                .Net(1 / Pound, 1.01 / Pound)
                .Knowing(known => known with { ReferenceInPounds = true })
                .RulingOut(MistakeCodes.PoundsAsKilograms, MistakeCodes.CountHalved)
        ),
        new(
            MistakeCodes.HalfOfPointsAsWhole,
            null,
            Suspected.Net(0.5, 0.505).Knowing(known => known with { CatchPoints = 8 }).RulingOut(MistakeCodes.CountDoubled)
        ),
    ];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Cases.Count)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Evaluate_PlantedMistake_IsTheFirstThatIsShown(int number)
    {
        var (code, at, test) = Cases[number];

        var result = test.Evaluated();

        Assert.NotEmpty(result.LikelyMistakes.Shown);
        var first = result.LikelyMistakes.Shown[0];
        Assert.Equal((code, at), (first.Code, first.Catch));
        Assert.InRange(first.BayesFactor, MistakeJudgement.ClearEvidence, LikelyMistake.MostBayesFactor);
        Assert.NotEqual(Verdict.Keep, result.Decision.Verdict);
        Assert.Contains(result.Reasons.Concat(result.Findings), each =>
            each.Code == CatchTestCodes.LikelyMistake || each.Code == CatchTestCodes.CannotBeToldApart
        );
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Evaluate_PlantedMistakeRuledOut_IsNotShown(int number)
    {
        var (code, _, test) = Cases[number];

        var result = test.Knowing(known => known with { RuledOut = [.. known.RuledOut, code] }).Evaluated();

        Assert.DoesNotContain(result.LikelyMistakes.Shown, each => each.Code == code);
    }

    [Fact]
    public void Cases_OfTheTable_PlantEveryMistake() =>
        Assert.Equivalent(MistakeCodes.All, Cases.Select(each => each.Code).Distinct(), strict: true);

    // Everything but the place and the code: a sentence that can be shown, and a check that can be done.
    [Theory]
    [MemberData(nameof(Numbers))]
    public void Evaluate_PlantedMistake_IsExplainedInSentences(int number)
    {
        var shown = Cases[number].Test.Evaluated().LikelyMistakes.Shown;

        Assert.All(shown, mistake =>
        {
            foreach (var sentence in (string[])[mistake.Detail.InMetric(), mistake.Code.Remedy])
            {
                Assert.EndsWith(sentence.EndsWith('?') ? "?" : ".", sentence, StringComparison.Ordinal);
                Assert.True(char.IsUpper(sentence[0]), sentence);
                Assert.DoesNotContain("NaN", sentence, StringComparison.Ordinal);
            }
        });
    }

    [Fact]
    public void Tare_OfOneCatch_NamesTheShareItExplains()
    {
        Assert.InRange(Tare, 0.09, 0.1);
        var first = Cases.First(each => each.Code == MistakeCodes.TareNotTakenOff).Test.Evaluated().LikelyMistakes.Shown[0];

        Assert.Equal(
            "Catch 2 shows 10 % more than the other catches show: the empty container left in the mass explains that.",
            first.Detail.InMetric()
        );
    }

    private sealed record Case(MistakeCode Code, int? At, CatchTestQuestion Test);
}
