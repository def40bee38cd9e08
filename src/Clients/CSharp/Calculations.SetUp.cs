using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

public sealed partial class Calculations
{
    /// <summary>Finds the pulses per distance, slip, width and what an error here does to the rate.</summary>
    /// <param name="question">The measured runs.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<DistanceSensorAnswer> EvaluateDistanceSensorAsync(DistanceSensorRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.DistanceSensor.ToPostRequestInformation(question).In(units), DistanceSensorAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<DistanceSensorRequest, DistanceSensorAnswer>> EvaluateDistanceSensorsAsync(IAsyncEnumerable<DistanceSensorRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.DistanceSensor.ToPostRequestInformation(new()).In(units), questions, DistanceSensorAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Finds the turns of a drive wheel for an area, and the rate of a turn test.</summary>
    /// <param name="question">The wheel, the width and what was caught.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<DriveWheelTurnsAnswer> EvaluateDriveWheelTurnsAsync(DriveWheelTurnsRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.DriveWheelTurns.ToPostRequestInformation(question).In(units), DriveWheelTurnsAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<DriveWheelTurnsRequest, DriveWheelTurnsAnswer>> EvaluateManyDriveWheelTurnsAsync(IAsyncEnumerable<DriveWheelTurnsRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.DriveWheelTurns.ToPostRequestInformation(new()).In(units), questions, DriveWheelTurnsAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Finds the bulk density of a product from weighed volumes, a test weight or a filled tank.</summary>
    /// <param name="question">What was weighed.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<BulkDensityAnswer> EvaluateBulkDensityAsync(BulkDensityRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.BulkDensity.ToPostRequestInformation(question).In(units), BulkDensityAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<BulkDensityRequest, BulkDensityAnswer>> EvaluateBulkDensitiesAsync(IAsyncEnumerable<BulkDensityRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.BulkDensity.ToPostRequestInformation(new()).In(units), questions, BulkDensityAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Finds what an element should deliver by its volume, and compares.</summary>
    /// <param name="question">The element, the density and a value to check.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<VolumeCheckAnswer> EvaluateVolumeCheckAsync(VolumeCheckRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.VolumeCheck.ToPostRequestInformation(question).In(units), VolumeCheckAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<VolumeCheckRequest, VolumeCheckAnswer>> EvaluateVolumeChecksAsync(IAsyncEnumerable<VolumeCheckRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.VolumeCheck.ToPostRequestInformation(new()).In(units), questions, VolumeCheckAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Finds out which metering element serves which rates and ground speeds.</summary>
    /// <param name="question">The elements, the rates and the ground speeds.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<MeterSpeedAnswer> EvaluateMeterSpeedAsync(MeterSpeedRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.MeterSpeed.ToPostRequestInformation(question).In(units), MeterSpeedAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<MeterSpeedRequest, MeterSpeedAnswer>> EvaluateMeterSpeedsAsync(IAsyncEnumerable<MeterSpeedRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.MeterSpeed.ToPostRequestInformation(new()).In(units), questions, MeterSpeedAnswer.CreateFromDiscriminatorValue, cancellationToken);
}
