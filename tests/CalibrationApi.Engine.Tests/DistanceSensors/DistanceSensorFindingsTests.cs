using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.Tests.DistanceSensors;

public sealed class DistanceSensorFindingsTests
{
    [Fact]
    public void Course_UnderAHundredFeet_IsShort()
    {
        var result = (Driven.Runs() with { Runs = [Driven.Run(260, 20)] }).Evaluated();

        Assert.Contains(result.Findings, finding => finding.Code == DistanceSensorCodes.ShortCourse);
        Assert.DoesNotContain((Driven.Runs() with { Runs = [Driven.Run(400, 30.48)] }).Evaluated().Findings, finding =>
            finding.Code == DistanceSensorCodes.ShortCourse
        );
    }

    [Fact]
    public void OneRun_SaysThatItsScatterIsADefault() =>
        Assert.Contains(Driven.Runs(1300).Evaluated().Findings, finding => finding.Code == SharedCodes.SingleReading);

    // At work 1300, on the road 1261: the wheel turns 3.1 % more often, a skid of 1 - 1300/1261.
    [Fact]
    public void Skid_OfAWheelThatTurnsMoreOftenAtWork_IsNegativeAndCalledSlip()
    {
        var result = (Driven.Runs(1300, 1301, 1299) with { ReferenceRuns = [Driven.Run(1261), Driven.Run(1261)] }).Evaluated();

        NearlyEqual.Assert(1 - 1300d / 1261, result.Skid!.Value, 1e-3);
        var finding = Assert.Single(result.Findings, finding => finding.Code == DistanceSensorCodes.WheelSlips);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("turns 3.1 % more often", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("it slips.", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Skid_OfAWheelThatTurnsLessOftenAtWork_IsPositive()
    {
        var result = (Driven.Runs(1240, 1240) with { ReferenceRuns = [Driven.Run(1300), Driven.Run(1300)] }).Evaluated();

        NearlyEqual.Assert(1 - 1240d / 1300, result.Skid!.Value, 1e-3);
        Assert.Contains(
            "it skids",
            Assert.Single(result.Findings, finding => finding.Code == DistanceSensorCodes.WheelSlips).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    // 1170 counts where 1300 are due are a skid of 10 %; against the counts made they would be 11.1 %.
    [Fact]
    public void Skid_IsAShareOfTheTurnsDue()
    {
        var result = (Driven.Runs(1170, 1170) with { ReferenceRuns = [Driven.Run(1300), Driven.Run(1300)] }).Evaluated();

        Assert.Contains(
            "turns 10.0 % less often",
            Assert.Single(result.Findings, finding => finding.Code == DistanceSensorCodes.WheelSlips).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    // Two runs that agree, against a number of half the size: a count of both edges, or a distance of 50 m, not a tyre.
    [Fact]
    public void Change_ThatIsLargeAndConfirmed_AsksForItsCause()
    {
        var result = Driven.Runs(2600, 2602).InForce(1300).Evaluated();

        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
        Assert.Contains(
            "100.1 %",
            Assert.Single(result.Findings, finding => finding.Code == DistanceSensorCodes.LargeChange).Detail.InMetric(),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(Driven.Runs(1340, 1341).InForce(1300).Evaluated().Findings, finding =>
            finding.Code == DistanceSensorCodes.LargeChange
        );
    }

    [Fact]
    public void Headline_OfPulses_TellsThemByTheFootToThoseWhoMeasureInFeet()
    {
        var headline = Driven.Runs(1300, 1300).Evaluated().Headline;

        Assert.StartsWith("The sensor gives 1300 pulses/100m (13 pulses/m), known", headline.InMetric(), StringComparison.Ordinal);
        Assert.Contains("(3.962 pulses/ft)", DisplayUnits.UnitedStates.Write(headline), StringComparison.Ordinal);
    }

    [Fact]
    public void Skid_WithinItsUncertainty_IsNotTalkedOf()
    {
        var result = (Driven.Runs(1300, 1301) with { ReferenceRuns = [Driven.Run(1299)] }).Evaluated();

        Assert.NotNull(result.Skid);
        Assert.DoesNotContain(result.Findings, finding => finding.Code == DistanceSensorCodes.WheelSlips);
    }

    [Fact]
    public void Skid_OfATenthAndMore_IsAWarning()
    {
        var result = (Driven.Runs(1500, 1501) with { ReferenceRuns = [Driven.Run(1300), Driven.Run(1301)] }).Evaluated();

        Assert.Contains(result.Findings, finding => finding.Code == DistanceSensorCodes.WheelSlips && finding.Severity == Severity.Warning);
    }

    // The tape measured both courses, so its error cancels: a worse tape widens the value but not the skid.
    [Fact]
    public void Skid_OfOneTape_DoesNotDependOnIt()
    {
        var question = Driven.Runs(1300, 1301) with { ReferenceRuns = [Driven.Run(1261)], TapeLimit = 0.001 };

        NearlyEqual.Assert(
            question.Evaluated().Skid!.ExpandedUncertainty,
            (question with { TapeLimit = 0.05 }).Evaluated().Skid!.ExpandedUncertainty
        );
    }

    [Theory]
    [InlineData(8.7, "too much")]
    [InlineData(9.3, "too little")]
    public void Width_OfPassesThatIsNotTheOneInForce_IsWarnedOf(double passToPass, string which)
    {
        var result = (Driven.Runs(1300) with { Width = new WorkingWidth(new Length(9), new Length(passToPass)) }).Evaluated();

        Assert.Contains(
            which,
            Assert.Single(result.Findings, finding => finding.Code == DistanceSensorCodes.WidthDiffers).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    // Passes as wide as the machine leave no strips, and need no correcting: only the number typed in is wrong.
    [Theory]
    [InlineData(9, 8.7, "3.3 % too little. Correct the width in the controller.")]
    [InlineData(9, 9.3, "3.3 % too much. Correct the width in the controller.")]
    [InlineData(9.3, 9, "3.2 % too little, and strips may be left. Correct the spacing of the passes, or the width in the controller.")]
    public void Width_FindingNamesWhatIsWrong(double passToPass, double inForce, string expected)
    {
        var result = (
            Driven.Runs(1300) with
            {
                Width = new WorkingWidth(new Length(9), new Length(passToPass), new Length(inForce)),
            }
        ).Evaluated();

        Assert.EndsWith(
            expected,
            Assert.Single(result.Findings, finding => finding.Code == DistanceSensorCodes.WidthDiffers).Detail.InMetric(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Entry_OfFewDigits_IsWarnedOfAndZeroForbidden()
    {
        var question = Driven.Runs(1300, 1301) with
        {
            ControllerEntry = SensorEntry.LengthOf(SensorForm.DistancePerPulse, UnitTable.Get("cm"), 0),
        };
        var coarse = question.Evaluated();
        var nothing = (
            question with
            {
                ControllerEntry = SensorEntry.LengthOf(SensorForm.DistancePerPulse, UnitTable.Get("m"), 0),
            }
        ).Evaluated();

        Assert.NotNull(coarse.Enter);
        Assert.Contains(coarse.Findings, finding =>
            finding.Code == SharedCodes.EntryResolutionMatters && finding.Severity == Severity.Warning
        );
        Assert.Null(nothing.Enter);
        Assert.Contains(nothing.Findings, finding =>
            finding.Code == SharedCodes.EntryResolutionMatters && finding.Severity == Severity.Stop
        );
    }

    [Fact]
    public void GroundSpeed_OfATimedRun_IsDistanceOverTime()
    {
        var run = new MeasuredRun(new Length(88 * 0.3048), 340) { Time = new Duration(12) };
        var speed = (Driven.Runs() with { Runs = [run, Driven.Run(1300)] }).Evaluated().Runs;

        NearlyEqual.Assert(5 * 1609.344 / 3600, speed[0].GroundSpeed!.Value.MetresPerSecond);
        Assert.Null(speed[1].GroundSpeed);
    }

    [Fact]
    public void Assumptions_OfAQuestionThatStatesAll_AreNone()
    {
        var question = Driven.Runs(1300, 1301).InForce(1300) with
        {
            DistanceResolution = new Length(0.1),
            TapeLimit = 0.001,
            Repeatability = 0.004,
            RepeatabilityDegreesOfFreedom = 10,
            Tolerance = 0.03,
            WantedPrecision = 0.02,
            SecondRunChange = 0.1,
            Width = new WorkingWidth(new Length(9), new Length(9), new Length(9)),
            MeterDrive = MeterDrive.RateControlled,
        };

        Assert.Empty(question.Evaluated().Assumptions);
        Assert.Equal(
            10,
            Driven.Runs(1300).InForce(1300) is var bare
                ? (
                    bare with
                    {
                        Width = new WorkingWidth(new Length(9)),
                        Counted = CountedThing.Turns,
                        PulsesPerTurn = new PulsesPerRevolution(1),
                    }
                )
                    .Evaluated()
                    .Assumptions.Count
                : 0
        );
    }
}
