using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Reads how far the meter turned, in whichever of the ways the request gives it.</summary>
internal sealed class RevolutionReading(CatchTestRequest request)
{
    private readonly Revolutions counter = RevolutionsQuantity.Read(request.CounterResolution) ?? CountDefaults.CounterResolution;
    private readonly Revolutions turn = RevolutionsQuantity.Read(request.TurnResolution) ?? CountDefaults.TurnResolution;
    private readonly Duration time = TimeQuantity.Read(request.TimeResolution) ?? CountDefaults.TimeResolution;
    private readonly Mass indicated = MassQuantity.Read(request.IndicatedMassResolution) ?? CountDefaults.IndicatedMassResolution;

    public CountedRevolutions Read(CatchOfTest one)
    {
        if (one.Pulses is { } pulses)
            return CountedRevolutions.FromPulses(pulses, request.PulsesPerRevolution!.Read());
        if (one.Turns is { } turns)
            return CountedRevolutions.FromTurns(turns.Canonical(), request.MeterRevolutionsPerTurn!.Canonical(), turn.Count);
        if (one.IndicatedMass is { } mass)
            return CountedRevolutions.FromIndicatedMass(mass.Read(), (request.ValueTypedIn ?? request.ValueInForce!).Read(), indicated);
        return one.RunTime is { } run
            ? CountedRevolutions.FromTime(run.Read(), request.MeterSpeed!.Read(), time)
            : CountedRevolutions.FromCounter(one.Revolutions!.Read(), counter);
    }

    public IEnumerable<Assumption> Assumptions()
    {
        var catches = request.Catches!;
        if (request.CounterResolution is null && catches.Any(one => one!.Revolutions is not null))
            yield return CatchTestDefaults.CounterResolution.Assumed("counterResolution");
        if (request.TurnResolution is null && catches.Any(one => one!.Turns is not null))
            yield return CatchTestDefaults.TurnResolution.Assumed("turnResolution");
        if (request.TimeResolution is null && catches.Any(one => one!.RunTime is not null))
            yield return CatchTestDefaults.TimeResolution.Assumed("timeResolution");
        if (request.IndicatedMassResolution is null && catches.Any(one => one!.IndicatedMass is not null))
            yield return CatchTestDefaults.IndicatedMassResolution.Assumed("indicatedMassResolution");
    }
}
