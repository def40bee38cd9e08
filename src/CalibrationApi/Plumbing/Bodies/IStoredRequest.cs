namespace CalibrationApi.Plumbing.Bodies;

/// <summary>A request that is stored as entered; its body is kept beside what was read from it.</summary>
public interface IStoredRequest
{
    /// <summary>The sender's own id for the record; null lets the service make one.</summary>
    string? Id { get; }
}
