using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Catches;

/// <summary>Defaults of a catch test with their origins; each is listed in an answer that used it.</summary>
public static class CatchTestDefaults
{
    /// <summary>Default of <see cref="CatchTestLimits.Tolerance"/>.</summary>
    public static DefaultValue Tolerance { get; } =
        new(
            new Ratio(CatchTestLimits.DefaultTolerance),
            "published acceptance limit: within 5 % of the target rate (Field and Solie 2007; University of Georgia Extension)"
        );

    /// <summary>Default of <see cref="CatchTestLimits.WantedPrecision"/>.</summary>
    public static DefaultValue WantedPrecision { get; } = new(new Ratio(CatchTestLimits.DefaultWantedPrecision), CountDefaults.Origin);

    /// <summary>Default of <see cref="CatchTestLimits.PrecisionProbability"/>.</summary>
    public static DefaultValue PrecisionProbability { get; } =
        new(
            new Ratio(CatchTestLimits.DefaultPrecisionProbability),
            "probability with which the number of catches asked for is enough; judgement, no published source"
        );

    /// <summary>Default of <see cref="CatchTestLimits.SecondTestChange"/>, with the default tolerance.</summary>
    public static DefaultValue SecondTestChange { get; } =
        new(
            new Ratio(CatchTestLimits.SecondTestTolerances * CatchTestLimits.DefaultTolerance),
            "twice the tolerance, by default twice the published 5 %: less can be one tolerance each of the old value and the new; judgement"
        );

    /// <summary>Default of <see cref="CatchTestLimits.DayToDay"/>.</summary>
    public static DefaultValue DayToDay { get; } =
        new(new Ratio(CatchTestLimits.DefaultDayToDay), "default until the series has five tests; judgement, no published source");

    /// <summary>Default of the spread between points of a partial catch.</summary>
    public static DefaultValue Spread { get; } =
        new(
            new Ratio(CaughtPoints.DefaultRelativeSpread),
            "published limit of 5 % for each outlet (University of Georgia Extension; Field and Solie 2007), taken as rectangular"
        );

    /// <summary>Default of the smallest step of a revolution counter.</summary>
    public static DefaultValue CounterResolution { get; } = new(CountDefaults.CounterResolution, CountDefaults.Origin);

    /// <summary>Default of the smallest step of a count of turns.</summary>
    public static DefaultValue TurnResolution { get; } = new(CountDefaults.TurnResolution, CountDefaults.Origin);

    /// <summary>Default of the smallest step of a run time.</summary>
    public static DefaultValue TimeResolution { get; } = new(CountDefaults.TimeResolution, CountDefaults.Origin);

    /// <summary>Default of the smallest step of a mass that the machine indicates.</summary>
    public static DefaultValue IndicatedMassResolution { get; } = new(CountDefaults.IndicatedMassResolution, CountDefaults.Origin);
}
