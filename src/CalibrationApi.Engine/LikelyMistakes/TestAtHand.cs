using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>A test as the kinds of mistake look at it; catches are those that count.</summary>
internal sealed class TestAtHand
{
    private readonly CatchReadings readings;
    private readonly double[] nets;
    private readonly double[] tares;
    private readonly double? meanTare;

    public TestAtHand(CatchTestQuestion test, CatchReadings readings)
    {
        Test = test;
        this.readings = readings;
        Expected = test.Reference is null ? null : (test.Predicted?.Value ?? test.Reference.Value).KilogramsPerRevolution;
        nets = new double[readings.Count];
        tares = new double[readings.Count];
        double sum = 0;
        var (known, zeros) = (0, 0);
        for (var i = 0; i < nets.Length; i++)
        {
            var one = test.Catches[readings.Positions[i]];
            nets[i] = one.IndicatedNet.Kilograms;
            tares[i] = one.Tare?.Kilograms ?? 0;
            zeros += one.Tare is { Kilograms: 0 } ? 1 : 0;
            sum += tares[i] > 0 ? tares[i] : 0;
            known += tares[i] > 0 ? 1 : 0;
        }

        TareIsZeroAgainstTheRecord =
            zeros == nets.Length && test.Context.ContainerTare is not null && test.TareReading != TareReading.Zeroed;
        meanTare = known > 0 ? sum / known : null;
    }

    public CatchTestQuestion Test { get; }

    public MistakeContext Context => Test.Context;

    public int Count => readings.Count;

    public ReferenceValue? Reference => Test.Reference;

    /// <summary>
    /// What was expected of the test, kg per revolution: the value predicted for its lot, else the one it is compared with; null without
    /// either.
    /// </summary>
    public double? Expected { get; }

    /// <summary>True when an empty mass above zero was taken off at least one catch.</summary>
    public bool HasAnyTare => meanTare is not null;

    /// <summary>Somebody has looked and found that it did not happen.</summary>
    public bool IsRuledOut(Mistake mistake) => Context.RuledOut.Count > 0 && Context.RuledOut.Contains(mistake.CodeFor(this));

    /// <summary>Mass metered as entered, kg.</summary>
    public double Mass(int at) => readings.Masses[at];

    /// <summary>Revolutions as entered.</summary>
    public double Turns(int at) => readings.Revolutions[at];

    /// <summary>
    /// ln of the mass per revolution of a catch over that of the others; over the value compared with where there are no others.
    /// </summary>
    public double Off(int at)
    {
        if (Count == 1)
            return Expected is { } expected ? Math.Log(readings.Values[0] / expected) : 0;
        double mass = 0,
            turns = 0;
        for (var i = 0; i < Count; i++)
        {
            mass += i == at ? 0 : Mass(i);
            turns += i == at ? 0 : Turns(i);
        }

        return Math.Log(readings.Values[at] * turns / mass);
    }

    /// <summary>Position among all catches of the test.</summary>
    public int Position(int at) => readings.Positions[at];

    /// <summary>Mass in the container as entered, kg: one part of the points only, scale as read.</summary>
    public double InContainer(int at) => nets[at];

    /// <summary>True when an empty mass above zero was taken off.</summary>
    public bool HasTare(int at) => tares[at] > 0;

    /// <summary>
    /// True when the empty container was read anew before this catch, and its reading differs from that of the catch before.
    /// </summary>
    public bool HasTareOfItsOwn(int at) => tares[at] > 0 && (at == 0 || tares[at] != tares[at - 1]);

    /// <summary>
    /// Every catch gives a tare of zero although an empty mass is on record and nobody says that the scale was set to zero.
    /// </summary>
    public bool TareIsZeroAgainstTheRecord { get; }

    /// <summary>The tare that was taken off, as metered mass, kg; 0 when none was.</summary>
    public double TareTakenOff(int at) => AsMetered(at, tares[at]);

    /// <summary>The gross mass entered, as metered mass, kg.</summary>
    public double Gross(int at) => Mass(at) + TareTakenOff(at);

    /// <summary>The empty mass of the container: as read, as stated, or as the other catches have it; null when nobody said it.</summary>
    public double? ContainerTare(int at)
    {
        if (HasTare(at))
            return TareTakenOff(at);
        return (Context.ContainerTare?.Kilograms ?? meanTare) is { } tare ? AsMetered(at, tare) : null;
    }

    /// <summary>The gross mass as the scale showed it, kg.</summary>
    public double OnTheScale(int at) => nets[at] + tares[at];

    /// <summary>The tare as the scale showed it, kg; 0 when none was taken off.</summary>
    public double TareOnTheScale(int at) => tares[at];

    /// <summary>A mass on the scale as it would enter the metered mass, kg.</summary>
    public double AsMetered(int at, Mass mass) => AsMetered(at, mass.Kilograms);

    /// <summary>A mass on the scale, kg, as it would enter the metered mass.</summary>
    public double AsMetered(int at, double kilograms) => kilograms * readings.Masses[at] / nets[at];
}
