using System.Globalization;
using System.Text;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Simulation.Mistakes;

namespace CalibrationApi.Simulation;

/// <summary>
/// The table of demo data whose tests have known mistakes in them: one catch a row, with the truth in the column that is read over.
/// </summary>
public static class PlantedMistakes
{
    /// <summary>Where the table is kept.</summary>
    public const string File = "planted-mistakes.csv";

    private const ulong Seed = 20260401;
    private const double PerRevolution = 0.36;
    private const double Turns = 47;

    private static readonly (string Truth, Mistake? Mistake)[] Tests =
    [
        ("nothing went wrong", null),
        ("the scale showed pounds", new PoundsAsKilograms()),
        ("tare left in catch 2", new TareNotTakenOff { OnlyIn = 1 }),
        ("tare taken off twice in catch 3", new TareTakenOffTwice { OnlyIn = 2 }),
        ("decimal point slipped in catch 1", new DecimalSlip(1) { OnlyIn = 0 }),
        ("every second turn counted", new CountMultiplied(0.5)),
        ("meter not primed", new NotPrimed(2.5) { OnlyIn = 0 }),
        ("tank bridged in catch 3", new BridgedOrEmptyTank(0.6) { OnlyIn = 2 }),
        ("three times the right number was in force", new WrongValueInForce(3)),
        ("nothing went wrong again", null),
    ];

    /// <summary>Writes the table: semicolons and decimal commas, as spreadsheets in much of Europe do.</summary>
    public static string Table()
    {
        var table = new StringBuilder(
            "test;note;scale.division [g];scale.accuracyClass;valueInForce [kg/rev];gross [kg];tare [kg];net [kg];revolutions [rev]\n"
        );
        for (var i = 0; i < Tests.Length; i++)
        {
            var (truth, mistake) = Tests[i];
            var test = Setup(mistake).Run(SeededRandom.Of(Seed, i));
            foreach (var one in test.Catches)
            {
                var ofTest =
                    one.Position == 0
                        ? $"{truth};{Cell(test.Question.Scale.Division.Kilograms * 1000)};{test.Question.Scale.AccuracyClass};{Cell(test.Question.Reference!.Value.KilogramsPerRevolution)}"
                        : ";;;";
                var masses = one.Tare is { } tare ? $"{Cell(one.Gross)};{Cell(tare)};" : $";;{Cell(one.Gross)}";
                table.Append(CultureInfo.InvariantCulture, $"{i + 1};{ofTest};{masses};{Cell(one.Counted)}\n");
            }
        }

        return table.ToString();
    }

    private static CatchTestSetup Setup(Mistake? mistake) =>
        new()
        {
            Device = new MeteringDevice
            {
                Displacement = new Volume(PerRevolution / (620 * 0.9)),
                BulkDensity = new BulkDensity(620),
                CatchScatter = 0.008,
                DayToDay = 0.01,
            },
            Scale = new SimulatedScale(new Scale { Division = new Mass(0.02), AccuracyClass = AccuracyClass.III }),
            PlannedTurns = [Turns, Turns, Turns],
            Asked = test => test with { Reference = new ReferenceValue(new MassPerRevolution(PerRevolution), ReferenceKind.ValueInForce) },
            Mistakes = mistake is null ? [] : [mistake],
        };

    private static string Cell(double number) => Math.Round(number, 3).ToString(CultureInfo.InvariantCulture).Replace('.', ',');
}
