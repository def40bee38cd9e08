using System.Text.Json;
using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using Microsoft.Kiota.Abstractions;
using Microsoft.Kiota.Abstractions.Serialization;
using Microsoft.Kiota.Serialization.Json;

namespace CalibrationApi.Client;

/// <summary>Records of one kind that can be changed and retired, never deleted.</summary>
/// <typeparam name="TDraft">What can be sent.</typeparam>
/// <typeparam name="TAnswer">What is stored.</typeparam>
public abstract class ChangeableRecords<TDraft, TAnswer>
    where TDraft : IParsable
    where TAnswer : IParsable
{
    private protected ChangeableRecords(Exchange exchange, DescribedRoutes<TDraft, TAnswer> routes)
    {
        Exchange = exchange;
        Routes = routes;
    }

    private protected Exchange Exchange { get; }

    private protected DescribedRoutes<TDraft, TAnswer> Routes { get; }

    /// <summary>Creates a record.</summary>
    /// <param name="draft">Its description. An id of your own, a UUID of version 7, makes it safe to send again at any time.</param>
    /// <param name="idempotencyKey">A key of your own, up to 200 ASCII characters: the same key with the same draft creates one record
    /// within 24 hours. Default a new one for each call.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public async Task<StoredRecord<TDraft, TAnswer>> CreateAsync(
        TDraft draft,
        string? idempotencyKey = null,
        CancellationToken cancellationToken = default
    ) => await ReadAsync(Routes.Create(draft).WithKey(idempotencyKey), cancellationToken).ConfigureAwait(false);

    /// <summary>Reads a record.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <exception cref="RecordNotFoundException">There is none with this id.</exception>
    public async Task<StoredRecord<TDraft, TAnswer>> GetAsync(string id, CancellationToken cancellationToken = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        return await ReadAsync(Routes.Get(id), cancellationToken).ConfigureAwait(false);
    }

    /// <summary>Saves the draft of a record in its place.</summary>
    /// <param name="record">The record as read, its draft changed.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>The record as it is now, to go on with.</returns>
    /// <exception cref="RecordChangedException">Somebody else changed it since it was read.</exception>
    public async Task<StoredRecord<TDraft, TAnswer>> SaveAsync(
        StoredRecord<TDraft, TAnswer> record,
        CancellationToken cancellationToken = default
    )
    {
        ArgumentNullException.ThrowIfNull(record);
        var request = Routes.Replace(record.Id, record.Draft);
        request.Headers.Add("If-Match", record.ETag);
        return await ReadAsync(request, cancellationToken).ConfigureAwait(false);
    }

    private async Task<StoredRecord<TDraft, TAnswer>> ReadAsync(RequestInformation request, CancellationToken cancellationToken)
    {
        var (answer, etag) = await Exchange.SendVersionedAsync(request, Routes.ReadAnswer, cancellationToken).ConfigureAwait(false);
        return new(((IStoredAnswer)answer).Id!, answer, DraftOf(answer), etag);
    }

    // Draft and answer have the same members, apart from those that the service adds; the draft does not know those and passes them over.
    private TDraft DraftOf(TAnswer answer)
    {
        using var writer = new JsonSerializationWriter();
        writer.WriteObjectValue(null, answer);
        using var document = JsonDocument.Parse(writer.GetSerializedContent());
        return new JsonParseNode(document.RootElement).GetObjectValue(Routes.ReadDraft);
    }
}
