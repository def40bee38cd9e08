using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>
/// What container, scale and element allow of a test. Invented numbers; the limits are our own judgement but for that of the display.
/// </summary>
public sealed class PhysicalLimitsTests
{
    private static readonly CatchTestQuestion Test = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8));

    [Fact]
    public void Evaluate_NothingKnownAround_LimitsNothing() => Assert.Empty(Test.Evaluated().Impossible);

    // 1.2 x 13.20 kg x (1 + 2 x 0.036056) = 16.98 kg: the first catch is beyond, the second is not.
    [Fact]
    public void Evaluate_CatchThatDoesNotFitIntoItsContainer_IsNamed()
    {
        var result = (Test with { Context = new() { ContainerCapacity = new Mass(13.20) } }).Evaluated();

        var finding = Assert.Single(result.Impossible);
        Assert.Equal((CatchTestCodes.MoreThanTheContainerHolds, Severity.Stop), (finding.Code, finding.Severity));
        Assert.Equal(
            "Do not use this test. Catch 1 of 17.08 kg does not fit into the container: heaped over its rim it holds about 15.84 kg. Check gross, unit, which container it was, its volume and the bulk density.",
            result.Headline.InMetric()
        );
        Assert.Contains(finding, result.Findings);
        Assert.Contains("container/heap", result.Assumptions.Select(assumption => assumption.Name));
        Assert.Null(result.Enter);
    }

    // Capacity 17 kg, e = 0.02 kg: shown up to 17.18 kg. The container counts, whether weighed with each catch or known from its record.
    [Theory]
    [InlineData(0.0, false)]
    [InlineData(0.10, false)]
    [InlineData(0.11, true)]
    public void Evaluate_LoadBeyondTheScale_CountsTheContainer(double tare, bool impossible)
    {
        var scale = Given.Platform with { Capacity = new Mass(17) };
        var weighed = (Given.Test(Given.Weighed(17.08 + tare, tare, 47)) with { Scale = scale }).Evaluated();
        Assert.Equal(impossible, weighed.Impossible.Count > 0);
        if (tare == 0)
            return;
        var known = (
            Given.Test(Given.Net(17.08, 47)) with
            {
                Scale = scale,
                Context = new() { ContainerTare = new Mass(tare) },
            }
        ).Evaluated();
        Assert.Equal(impossible, known.Impossible.Count > 0);
    }

    [Fact]
    public void Evaluate_LoadBeyondTheScale_SaysWhatItWas()
    {
        var result = (Given.Test(Given.Weighed(20, 3, 47)) with { Scale = Given.Platform with { Capacity = new Mass(15) } }).Evaluated();

        Assert.Equal(CatchTestCodes.LoadBeyondCapacity, Assert.Single(result.Reasons).Code);
        Assert.StartsWith(
            "Do not use this test. Catch 1 is a load of 20 kg on a scale that takes 15 kg.",
            result.Headline.InMetric(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Evaluate_MoreThanTheElementDelivers_SaysSoFirst()
    {
        var result = (Test with { Element = Content(0.2e-3) }).Evaluated();

        Assert.Equal(ElementCodes.MoreThanTheElementHolds, Assert.Single(result.Reasons).Code);
        Assert.StartsWith(
            "Do not use this test. The measured value, 0.3627 kg/rev, is more than the element coarse can deliver: full it holds 0.124 kg/rev",
            result.Headline.InMetric(),
            StringComparison.Ordinal
        );
    }

    // A wrong number in force is what the test corrects, no reason not to use it.
    [Fact]
    public void Evaluate_ValueInForceThatCannotBe_IsWarnedOf()
    {
        var result = (Test.InForce(0.9) with { Element = Content(0.6e-3) }).Evaluated();

        Assert.Empty(result.Impossible);
        Assert.Equal(
            Severity.Warning,
            Assert.Single(result.Findings, finding => finding.Code == ElementCodes.MoreThanTheElementHolds).Severity
        );
    }

    [Fact]
    public void Evaluate_UnusualValue_IsAFindingAndChangesNoVerdict()
    {
        var result = (Test.InForce(0.3627) with { Element = Content(0.45e-3) }).Evaluated();

        Assert.Equal(Verdict.Keep, result.Decision.Verdict);
        Assert.Equal(
            2,
            result.Findings.Count(finding => finding.Code == ElementCodes.FillUnlikeExpected && finding.Severity == Severity.Warning)
        );
    }

    // 0.6 L of 620 kg/m3 at 90 % are 0.3348 kg; the spread is sqrt(0.15^2 + 0.03^2 + 0.02^2).
    [Fact]
    public void Evaluate_NothingElseToCompareWith_StartsFromTheContentOfTheElement()
    {
        var result = (Test with { Element = Content(0.6e-3) }).Evaluated();

        Assert.Equal(ReferenceKind.StartValue, result.Change!.Reference.Kind);
        NearlyEqual.Assert(0.3348, result.Change.Reference.Value.KilogramsPerRevolution);
        NearlyEqual.Assert(Math.Sqrt(0.15 * 0.15 + 0.03 * 0.03 + 0.02 * 0.02), result.Change.Reference.StandardUncertainty);
        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
        var assumption = Assert.Single(result.Assumptions, one => one.Name == "startValue");
        Assert.Contains("judgement", assumption.Origin, StringComparison.Ordinal);
        Assert.Equal(
            ReferenceKind.ValueInForce,
            (Test.InForce(0.36) with { Element = Content(0.6e-3) }).Evaluated().Change!.Reference.Kind
        );
    }

    [Fact]
    public void Evaluate_UnlikeTheOtherProductsOfTheElement_IsWarnedOf()
    {
        var others = new OtherProductsOfElement(
            new(new BulkDensity(620)),
            [new KnownDelivery("wheat", new(new MassPerRevolution(0.60)), new(new BulkDensity(780)))]
        );

        var finding = Assert.Single((Test with { OtherProducts = others }).Evaluated().Findings, one =>
            one.Code == ElementCodes.UnlikeOtherProducts
        );

        Assert.StartsWith(
            "By their bulk densities, wheat on this element let 0.4769 kg/rev be expected; 0.3627 kg/rev is 3.",
            finding.Detail.InMetric(),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            ElementCodes.UnlikeOtherProducts,
            (Test with { OtherProducts = others with { Known = [others.Known[0] with { Value = new(new MassPerRevolution(0.46)) }] } })
                .Evaluated()
                .Findings.Select(one => one.Code)
        );
    }

    private static ElementContent Content(double cubicMetres) =>
        new(new(new Volume(cubicMetres)), new(new BulkDensity(620)), null, "coarse");
}
