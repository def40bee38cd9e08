namespace CalibrationApi.Client;

/// <summary>A described record as it was read, and a draft of its next version.</summary>
/// <typeparam name="TDraft">What can be sent.</typeparam>
/// <typeparam name="TAnswer">What is stored.</typeparam>
public sealed class StoredRecord<TDraft, TAnswer>
{
    internal StoredRecord(string id, TAnswer answer, TDraft draft, string etag)
    {
        Id = id;
        Answer = answer;
        Draft = draft;
        ETag = etag;
    }

    /// <summary>Id, by which other records refer to it.</summary>
    public string Id { get; }

    /// <summary>The record as stored.</summary>
    public TAnswer Answer { get; }

    /// <summary>A copy to change and then to save. It holds what this version of the client knows.</summary>
    public TDraft Draft { get; }

    /// <summary>The version that was read. Saving sends it along, so that no change of somebody else is lost.</summary>
    public string ETag { get; }
}
