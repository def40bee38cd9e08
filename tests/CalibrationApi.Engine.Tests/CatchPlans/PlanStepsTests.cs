using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.CatchPlans;

/// <summary>Steps as a set with dependencies, derived from the machine's own points; and the cautions that apply.</summary>
public sealed class PlanStepsTests
{
    private static readonly DisturbedPoint[] Points =
    [
        new("distribution hose", "take it off under the tank", "put it back and fasten the clamp"),
        new("side cover", null, null),
    ];

    private static readonly IReadOnlyList<PlanStep> Steps = (Planned.Plan(Planned.Front, Planned.Rear) with { DisturbedPoints = Points })
        .Evaluated()
        .Steps;

    [Fact]
    public void Steps_Ids_AreUniqueAndEveryDependencyExists()
    {
        Assert.Distinct(Steps.Select(step => step.Id));
        Assert.All(Steps, step => Assert.All(step.After, id => Assert.Contains(Steps, other => other.Id == id)));
    }

    [Fact]
    public void Sentences_MeterCalledByANumber_SayThatItIsAMeter()
    {
        var plan = Planned.Plan(Planned.Front with { Name = "3" }).Evaluated();

        Assert.Contains(" at meter 3 in ", plan.Headline.InMetric(), StringComparison.Ordinal);
        Assert.All(plan.Steps.Where(step => step.Meter == "3"), step =>
            Assert.Contains("meter 3", step.Detail.InMetric(), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Steps_Dependencies_HaveNoCycle() => AssertAcyclic(Steps);

    [Fact]
    public void Steps_Safety_ComesBeforeEverything()
    {
        var first = Assert.Single(Steps, step => step.After.Count == 0);

        Assert.Equal("make-safe", first.Id);
        Assert.All(Steps.Where(step => step != first), step => Assert.Contains("make-safe", AllBefore(Steps, step.Id)));
    }

    [Theory]
    [InlineData(MeterDrive.Separate)]
    [InlineData(MeterDrive.SharedShaft)]
    public void Steps_HandsUnderATank_NeverWhileAnyMeterMayTurn(MeterDrive drive)
    {
        var steps = (Planned.Plan(Planned.Front, Planned.Rear) with { DisturbedPoints = Points, Drive = drive }).Evaluated().Steps;
        string[] hands = ["place-container-", "tare-", "weigh-", "open-point-", "restore-point-"];
        string[] turning = ["prime-meter-", "run", "stop-"];
        foreach (var hand in steps.Where(step => hands.Any(name => step.Id.StartsWith(name, StringComparison.Ordinal))))
        {
            foreach (var turn in steps.Where(step => turning.Any(name => step.Id.StartsWith(name, StringComparison.Ordinal))))
            {
                var turnFirst = AllBefore(steps, hand.Id).Contains(turn.Id);
                Assert.NotEqual(turnFirst, AllBefore(steps, turn.Id).Contains(hand.Id));
                var between = AllBefore(steps, turnFirst ? hand.Id : turn.Id)
                    .Where(id => AllBefore(steps, id).Contains(turnFirst ? turn.Id : hand.Id));
                Assert.Contains(between, id => id.StartsWith(turnFirst ? "make-safe-" : "stand-clear-", StringComparison.Ordinal));
            }
        }
    }

    [Fact]
    public void Steps_EveryPointThatIsOpened_IsRestoredAfterTheTestAndBeforeSeeding()
    {
        var ready = AllBefore(Steps, "check-ready");
        for (var i = 1; i <= Points.Length; i++)
        {
            Assert.Contains($"restore-point-{i}", ready);
            Assert.Contains("evaluate", AllBefore(Steps, $"restore-point-{i}"));
            Assert.Contains($"open-point-{i}", AllBefore(Steps, $"restore-point-{i}"));
        }
    }

    [Fact]
    public void Steps_PointsOfTheMachine_KeepTheOwnersWords()
    {
        Assert.Equal("distribution hose: take it off under the tank", Detail("open-point-1"));
        Assert.Equal("distribution hose: put it back and fasten the clamp", Detail("restore-point-1"));
    }

    [Fact]
    public void Steps_PointWithoutWords_GetsPlainOnes()
    {
        Assert.Equal("side cover: open or isolate it for the test, and note that you did.", Detail("open-point-2"));
        Assert.Equal("side cover: put it back as it was before the test.", Detail("restore-point-2"));
    }

    [Fact]
    public void Steps_EachMeter_IsPlacedPrimedTaredCaughtAndWeighedInThatOrder()
    {
        for (var i = 1; i <= 2; i++)
        {
            string[] order =
            [
                $"place-container-{i}",
                "set-simulated-speed",
                $"prime-meter-{i}",
                $"check-drive-{i}",
                $"tare-{i}",
                "zero-counts",
                "run",
                $"stop-meter-{i}",
                $"weigh-{i}",
                "evaluate",
            ];
            foreach (var (before, after) in order.Zip(order.Skip(1)))
                Assert.Contains(before, AllBefore(Steps, after));
        }
    }

    // A test drive that turns at another speed than in the field is seen while priming, and turns made then must not be counted.
    [Fact]
    public void Steps_SpeedOfTheTestDriveAndCounts_AreCheckedBeforeTheRun()
    {
        Assert.Contains("35.5 rpm", Detail("check-drive-1"), StringComparison.Ordinal);
        Assert.Contains("to zero", Detail("zero-counts"), StringComparison.Ordinal);
        Assert.Contains("9 km/h", Detail("set-simulated-speed"), StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_OneMeter_DoesNotWaitForAnother() => Assert.DoesNotContain("prime-meter-1", AllBefore(Steps, "prime-meter-2"));

    [Fact]
    public void Steps_MeterSteps_NameTheirMeter()
    {
        Assert.Equal("front", Steps.Single(step => step.Id == "weigh-1").Meter);
        Assert.Equal("rear", Steps.Single(step => step.Id == "weigh-2").Meter);
        Assert.Null(Steps.Single(step => step.Id == "run").Meter);
    }

    [Fact]
    public void Steps_NothingDisturbed_StillEndsWithTheReadinessCheck()
    {
        var steps = Planned.Plan(Planned.Front).Evaluated().Steps;

        AssertAcyclic(steps);
        Assert.Contains("evaluate", AllBefore(steps, "check-ready"));
        Assert.Equal(
            "Before seeding, check that the machine is as it was before the test.",
            steps.Single(step => step.Id == "check-ready").Detail.InMetric()
        );
    }

    [Fact]
    public void Steps_ReadinessCheck_NamesThePointsOfThisMachineAndNoOthers() =>
        Assert.Equal(
            $"Before seeding, check that each of these is as it was before the test: {string.Join("; ", Points.Select(point => point.Name))}.",
            Detail("check-ready")
        );

    [Theory]
    [InlineData(TareReading.Zeroed, "Set the scale to zero with the empty container")]
    [InlineData(TareReading.Each, "Weigh the empty container (")]
    [InlineData(TareReading.Shared, "Weigh the empty container (")]
    public void Steps_WayOfTaring_IsFollowed(TareReading tare, string expected) =>
        Assert.Contains(
            expected,
            (Planned.Plan(Planned.Front) with { TareReading = tare })
                .Evaluated()
                .Steps.Single(step => step.Id == "tare-1")
                .Detail.InMetric(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("manual-first")]
    [InlineData("unexpected-start")]
    [InlineData("rotating-parts")]
    [InlineData("stored-pressure")]
    [InlineData("product-dust")]
    [InlineData("tank-entry")]
    [InlineData("heavy-container")]
    public void Cautions_EveryPlan_CarriesTheUsualOnes(string code) =>
        Assert.Single(Planned.Plan(Planned.Front).Evaluated().Cautions, caution => caution.Code.Word == code);

    [Fact]
    public void Cautions_HeavyContainer_NamesTheHeaviestWithItsCatch() =>
        Assert.Contains(
            "24.34 kg",
            Planned
                .Plan(Planned.Front, Planned.Middle)
                .Evaluated()
                .Cautions.Single(caution => caution.Code == CatchPlanCodes.HeavyContainer)
                .Detail.InMetric(),
            StringComparison.Ordinal
        );

    /// <summary>Fails when a step comes, directly or not, after itself or after one that does not exist.</summary>
    internal static void AssertAcyclic(IReadOnlyList<PlanStep> steps)
    {
        var done = new HashSet<string>();
        while (done.Count < steps.Count)
        {
            var possible = steps.Where(step => !done.Contains(step.Id) && step.After.All(done.Contains)).ToArray();
            Assert.True(possible.Length > 0, $"Stuck after {string.Join(", ", done)}.");
            done.UnionWith(possible.Select(step => step.Id));
        }
    }

    /// <summary>Every step that comes before another, directly or not.</summary>
    internal static HashSet<string> AllBefore(IReadOnlyList<PlanStep> steps, string id)
    {
        var before = new HashSet<string>();
        var open = new Stack<string>(steps.Single(step => step.Id == id).After);
        while (open.TryPop(out var next))
        {
            if (!before.Add(next))
                continue;
            foreach (var earlier in steps.Single(step => step.Id == next).After)
                open.Push(earlier);
        }

        return before;
    }

    private static string Detail(string id) => Steps.Single(step => step.Id == id).Detail.InMetric();
}
