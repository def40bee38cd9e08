using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Weighing;
using FsCheck;
using FsCheck.Fluent;

namespace CalibrationApi.Engine.Tests.Properties;

/// <summary>One reading as a person would write it down: whole divisions of the scale, tenths of a revolution.</summary>
public sealed record Reading(int NetDivisions, int TareDivisions, int TenthsOfRevolution);

/// <summary>A catch test in whole numbers, so that it can be put together in any unit.</summary>
public sealed record RandomTest(
    Reading[] Readings,
    int MilligramsOfDivision,
    TareReading Tare,
    ScaleKind Kind,
    int MilligramsInForce,
    bool SameScale
)
{
    public double Division => MilligramsOfDivision / 1e6;

    public override string ToString() =>
        $"d = {Division} kg, {Tare}, {Kind}, in force {MilligramsInForce / 1e6}, same scale {SameScale}: {string.Join(" ", (object[])Readings)}";

    /// <summary>
    /// The test with every mass written in <paramref name="mass"/> and every mass per revolution in <paramref name="perRevolution"/>.
    /// </summary>
    public CatchTestQuestion In(Unit mass, Unit perRevolution)
    {
        // The numbers as typed in that unit, rounded to a double, then read back: what a sender's conversion does.
        Mass Kilograms(double value) => new(mass.Canonical(mass.FromCanonical(value)));
        return new CatchTestQuestion
        {
            Catches =
            [
                .. Readings.Select(one =>
                    Catch.Weighed(
                        Kilograms((one.NetDivisions + one.TareDivisions) * Division),
                        Kilograms(one.TareDivisions * Division),
                        Given.Turns(one.TenthsOfRevolution / 10.0)
                    )
                ),
            ],
            Scale = new Scale
            {
                Division = Kilograms(Division),
                AccuracyClass = Kind == ScaleKind.Classed ? AccuracyClass.III : null,
                StatedAccuracy = Kind == ScaleKind.Stated ? Kilograms(2 * Division) : null,
                KnownError = Kind == ScaleKind.Checked ? new KnownScaleError(0.004, 0.0008) : null,
            },
            TareReading = Tare,
            Reference = new ReferenceValue(
                new MassPerRevolution(perRevolution.Canonical(perRevolution.FromCanonical(MilligramsInForce / 1e6))),
                ReferenceKind.ValueInForce,
                0.012,
                !SameScale
            ),
        };
    }

    public CatchTestQuestion InKilograms => In(UnitTable.Get("kg"), UnitTable.Get("kg/rev"));
}

/// <summary>What is known of the scale.</summary>
public enum ScaleKind
{
    Unknown,
    Classed,
    Stated,
    Checked,
}

/// <summary>Generators for the property tests.</summary>
public static class RandomCatchTests
{
    public static Arbitrary<RandomTest> Tests() =>
        Arb.From(
            from count in Gen.Choose(1, 6)
            from milligrams in Gen.Choose(20_000, 900_000)
            from division in Gen.Elements(1_000, 5_000, 10_000, 20_000, 50_000)
            from readings in Gen.ArrayOf(Readings(milligrams / 1e6, division / 1e6), count)
            from tare in Gen.Elements(TareReading.Each, TareReading.Shared, TareReading.Zeroed)
            from kind in Gen.Elements(ScaleKind.Unknown, ScaleKind.Classed, ScaleKind.Stated, ScaleKind.Checked)
            from percent in Gen.Choose(-15, 15)
            from same in Gen.Elements(true, false)
            select new RandomTest(readings, division, tare, kind, milligrams + milligrams / 100 * percent, same)
        );

    private static Gen<Reading> Readings(double perRevolution, double division) =>
        from tenths in Gen.Choose(50, 1500)
        from permille in Gen.Choose(-30, 30)
        from tare in Gen.Choose(20, 200)
        select new Reading(Math.Max(20, (int)Math.Round(perRevolution * tenths / 10 * (1 + permille / 1000.0) / division)), tare, tenths);
}
