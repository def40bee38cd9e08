using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>A first test: nothing in force, with or without a start value.</summary>
public sealed class NothingInForceTests
{
    private static readonly CatchTestQuestion First = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)) with
    {
        TargetRate = new MassPerArea(0.009),
        Area = new Area(480_000),
        ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3),
    };

    [Fact]
    public void Evaluate_NoReference_ComparesNothing()
    {
        var result = First.Evaluated();

        Assert.Null(result.Change);
        Assert.Null(result.EffectIfValueInForceStays);
        Assert.Equal(CatchTestVerdict.Rule.NothingInForce, result.Decision.Rule);
        Assert.Equal(0.363, result.Enter!.Typed);
    }

    [Fact]
    public void Evaluate_NoReference_SaysHowSureTheFirstValueIs()
    {
        var result = First.Evaluated();

        Assert.Equal("The meter delivers 0.3627 kg/rev, known within 1.6 %. Adopt 0.363 kg/rev.", result.Headline.InMetric());
        Assert.Equal(SharedCodes.NoValueInForce, Assert.Single(result.Reasons).Code);
    }

    [Fact]
    public void Evaluate_StartValue_ComparesButHasNoEffectYet()
    {
        var result = First.StartingFrom(0.35).Evaluated();

        NearlyEqual.Assert(result.Estimate.Value.Value / 0.35 - 1, result.Change!.Delta.Value, 1e-9);
        Assert.Null(result.EffectIfValueInForceStays);
        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
    }

    [Fact]
    public void Evaluate_StartValueThatWasExact_IsStillReplacedByTheMeasurement()
    {
        var measured = First.Evaluated().Estimate.Value.Value;

        Assert.Equal(CatchTestVerdict.Rule.NothingInForce, First.StartingFrom(measured).Evaluated().Decision.Rule);
    }

    [Fact]
    public void Evaluate_ReferenceOrNot_GivesTheSameEstimate() =>
        Assert.Equal(First.Evaluated().Estimate, First.InForce(0.342).Evaluated().Estimate);
}
