using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>A test as the kinds of mistake look at it; catches are those that count.</summary>
internal sealed class TestAtHand(CatchTest test, CatchReadings readings)
{
    public CatchTest Test => test;

    public MistakeContext Context => test.Context;

    public int Count => readings.Count;

    public ReferenceValue? Reference => test.Reference;

    /// <summary>Mass metered as entered, kg.</summary>
    public double Mass(int at) => readings.Masses[at];

    /// <summary>Position among all catches of the test.</summary>
    public int Position(int at) => readings.Positions[at];

    /// <summary>Mass in the container as entered, kg: one part of the points only, scale as read.</summary>
    public double InContainer(int at) => CatchAt(at).IndicatedNet.Kilograms;

    /// <summary>True when an empty mass above zero was taken off.</summary>
    public bool HasTare(int at) => CatchAt(at).Tare is { Kilograms: > 0 };

    /// <summary>True when an empty mass above zero was taken off at least one catch.</summary>
    public bool HasAnyTare
    {
        get
        {
            for (var i = 0; i < Count; i++)
            {
                if (HasTare(i))
                    return true;
            }

            return false;
        }
    }

    /// <summary>The tare that was taken off, as metered mass, kg; 0 when none was.</summary>
    public double TareTakenOff(int at) => AsMetered(at, CatchAt(at).Tare ?? default);

    /// <summary>The gross mass entered, as metered mass, kg.</summary>
    public double Gross(int at) => Mass(at) + TareTakenOff(at);

    /// <summary>The empty mass of the container: as read, as stated, or as the other catches have it; null when nobody said it.</summary>
    public double? ContainerTare(int at)
    {
        if (HasTare(at))
            return TareTakenOff(at);
        if (Context.ContainerTare is { } stated)
            return AsMetered(at, stated);
        double sum = 0;
        var known = 0;
        for (var i = 0; i < Count; i++)
        {
            if (!HasTare(i))
                continue;
            sum += CatchAt(i).Tare!.Value.Kilograms;
            known++;
        }

        return known > 0 ? AsMetered(at, new Mass(sum / known)) : null;
    }

    /// <summary>A mass on the scale as it would enter the metered mass, kg.</summary>
    public double AsMetered(int at, Mass mass) => mass.Kilograms * readings.Masses[at] / CatchAt(at).IndicatedNet.Kilograms;

    private Catch CatchAt(int at) => test.Catches[readings.Positions[at]];
}
