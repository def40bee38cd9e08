namespace CalibrationApi.Clients.Tests;

/// <summary>Invented questions and records.</summary>
internal static class Given
{
    /// <summary>Two catches at a front meter.</summary>
    public static CatchTestRequest CatchTest() =>
        new()
        {
            Scale = new() { Division = Mass.Kilograms(0.02), AccuracyClass = ScaleOfTest_accuracyClass.III },
            ValueInForce = MassPerRevolution.KilogramsPerRevolution(0.342),
            ControllerEntry = new()
            {
                Form = ControllerEntryOfTest_form.MassPerRevolution,
                Unit = ControllerEntryOfTest_unit.KgRev,
                Decimals = 3,
            },
            Catches =
            [
                new()
                {
                    Gross = Mass.Kilograms(18.70),
                    Tare = Mass.Kilograms(1.62),
                    Revolutions = Revolutions.Of(47.0),
                },
                new()
                {
                    Gross = Mass.Kilograms(18.56),
                    Tare = Mass.Kilograms(1.62),
                    Revolutions = Revolutions.Of(46.8),
                },
            ],
        };

    /// <summary>The same without a single turn, which is refused.</summary>
    public static CatchTestRequest CatchTestWithoutTurns()
    {
        var question = CatchTest();
        question.Catches![1].Revolutions = Revolutions.Of(0);
        return question;
    }

    public static ScaleRequest Scale(string name = "shed scale") =>
        new()
        {
            Name = name,
            Division = Mass.Kilograms(0.05),
            Capacity = Mass.Kilograms(60),
        };

    /// <summary>A test of the season's machine.</summary>
    public static RecordCatchTestRequest RecordedTest() =>
        new()
        {
            Machine = Season.Machine,
            Meter = "front",
            Element = "coarse roller",
            Product = Season.Barley,
            Scale = Season.PlatformScale,
            OccurredAt = new DateTimeOffset(2026, 5, 8, 18, 0, 0, TimeSpan.FromHours(2)),
            RecordedBy = "operator",
            Catches = CatchTest().Catches,
        };
}
