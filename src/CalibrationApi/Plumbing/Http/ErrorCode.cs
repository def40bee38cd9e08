using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Contract;

namespace CalibrationApi.Plumbing.Http;

/// <summary>The stable codes of errors: the comment of each is its cause, <see cref="RemedyAttribute"/> what to do.</summary>
internal static class ErrorCode
{
    /// <summary>The body is not JSON, or not UTF-8.</summary>
    [Remedy("Send one JSON object in UTF-8. The sentence says where reading stopped."), Statuses(400)]
    public const string JsonBroken = "json-broken";

    /// <summary>
    /// A value is of another type than the contract says, for example a text where a number belongs. In a cell of a table it comes with
    /// 422.
    /// </summary>
    [Remedy("Send the type that the sentence names. Numbers stand without quotes and with a decimal point."), Statuses(400, 422)]
    public const string TypeWrong = "type-wrong";

    /// <summary>A member, query parameter or column of a table is unknown here; often it is misspelt. Columns come with 422.</summary>
    [Remedy("Correct the name or leave it out. The sentence lists what is known or names the nearest."), Statuses(400, 422)]
    public const string MemberUnknown = "member-unknown";

    /// <summary>A member, query parameter or column of a table is given twice. Columns come with 422.</summary>
    [Remedy("Give it once."), Statuses(400, 422)]
    public const string MemberDuplicate = "member-duplicate";

    /// <summary>A member that is needed is not there.</summary>
    [Remedy("Add the member at the pointer."), Statuses(422)]
    public const string MemberMissing = "member-missing";

    /// <summary>A number has no unit.</summary>
    [Remedy("Add a unit beside the value, for example { \"value\": 68, \"unit\": \"kg/ha\" }."), Statuses(422)]
    public const string UnitMissing = "unit-missing";

    /// <summary>The unit is not in the list of units.</summary>
    [Remedy("Use a symbol of GET /v1/units, written exactly so: upper and lower case count."), Statuses(422)]
    public const string UnitUnknown = "unit-unknown";

    /// <summary>The unit is known but measures something else than is asked here.</summary>
    [Remedy("Use one of the units that the sentence lists."), Statuses(422)]
    public const string UnitWrongDimension = "unit-wrong-dimension";

    /// <summary>People write this symbol for more than one unit.</summary>
    [Remedy("Write which is meant; the sentence lists them."), Statuses(422)]
    public const string UnitAmbiguous = "unit-ambiguous";

    /// <summary>The number is outside the range that is possible or sensible here.</summary>
    [Remedy("Check the number and its unit. The sentence tells the range."), Statuses(422)]
    public const string NumberOutOfRange = "number-out-of-range";

    /// <summary>A number in a table can be read in more than one way, because of its commas and points.</summary>
    [Remedy("Write decimals as the sentence shows, and no thousands separators."), Statuses(422)]
    public const string NumberAmbiguous = "number-ambiguous";

    /// <summary>The rows of one test do not stand together in the table.</summary>
    [Remedy("Sort the rows by test, or give each test a name of its own."), Statuses(422)]
    public const string RowsApart = "rows-apart";

    /// <summary>The text is longer than is kept.</summary>
    [Remedy("Shorten it to the length that the sentence tells."), Statuses(422)]
    public const string TextTooLong = "text-too-long";

    /// <summary>The text is blank or not of the form asked for.</summary>
    [Remedy("Write it as the sentence says, or leave the member out."), Statuses(400, 422)]
    public const string TextWrong = "text-wrong";

    /// <summary>The word is not in the closed list of this member or parameter.</summary>
    [Remedy("Use one of the words that the sentence lists."), Statuses(422)]
    public const string WordUnknown = "word-unknown";

    /// <summary>The list has too few items.</summary>
    [Remedy("Add items."), Statuses(422)]
    public const string TooFew = "too-few";

    /// <summary>The list has more items than one request takes.</summary>
    [Remedy("Split the request."), Statuses(422)]
    public const string TooMany = "too-many";

    /// <summary>The net mass is zero or below.</summary>
    [Remedy("Weigh again. A scale that shows a negative net mass was zeroed with a load on it."), Statuses(422)]
    public const string NetNegative = "net-negative";

    /// <summary>The empty container weighs as much as the full one, or more.</summary>
    [Remedy("Check whether the two were swapped and whether both units are right."), Statuses(422)]
    public const string TareAboveGross = "tare-above-gross";

    /// <summary>The meter is said not to have turned.</summary>
    [Remedy("Give the count of the meter for this catch; without it the mass says nothing."), Statuses(422)]
    public const string RevolutionsNotPositive = "revolutions-not-positive";

    /// <summary>Every catch is excluded, so nothing is left to evaluate.</summary>
    [Remedy("Let at least one catch count."), Statuses(422)]
    public const string CatchesAllExcluded = "catches-all-excluded";

    /// <summary>A volume can only be used together with the bulk density of the product.</summary>
    [Remedy("Weigh a known volume of the product and add its bulk density."), Statuses(422)]
    public const string DensityMissing = "density-missing";

    /// <inheritdoc cref="RefusalCode.SettingsAtOdds"/>
    public const string SettingsAtOdds = RefusalCode.SettingsAtOdds;

    /// <summary>There is nothing at this address, or no record with this id.</summary>
    [Remedy("Check the address and the id, or look in the list."), Statuses(404)]
    public const string NotFound = "not-found";

    /// <summary>The address exists but does not take this method.</summary>
    [Remedy("Use a method of the Allow header."), Statuses(405)]
    public const string MethodNotAllowed = "method-not-allowed";

    /// <summary>None of the media types in Accept can be given.</summary>
    [Remedy("Accept application/json; lists also come as text/csv and application/x-ndjson."), Statuses(406)]
    public const string NotAcceptable = "not-acceptable";

    /// <summary>The body is not of a media type that is taken here.</summary>
    [Remedy("Send application/json in UTF-8 with that Content-Type."), Statuses(415)]
    public const string MediaTypeUnsupported = "media-type-unsupported";

    /// <summary>The body is larger than the service takes.</summary>
    [Remedy("Split the request."), Statuses(413)]
    public const string BodyTooLarge = "body-too-large";

    /// <summary>The body came too slowly, or not to its end.</summary>
    [Remedy("Send it again over a better connection, or in smaller requests."), Statuses(408)]
    public const string BodyTooSlow = "body-too-slow";

    /// <summary>The body is compressed.</summary>
    [Remedy("Send the body as it is, without Content-Encoding."), Statuses(415)]
    public const string EncodingUnsupported = "encoding-unsupported";

    /// <summary>You sent more requests than a policy of RateLimit-Policy allows; violated-policies names it.</summary>
    [Remedy("Wait as long as Retry-After says. RateLimit tells with every answer how much is left."), Statuses(429)]
    public const string RateExceeded = "rate-exceeded";

    /// <summary>The service has more to do than it can, or the request took it too long.</summary>
    [Remedy("Try again when Retry-After is over, with a smaller request if this one was large."), Statuses(503)]
    public const string ServiceBusy = "service-busy";

    /// <summary>The request is not HTTP that the service takes: too long an address, too large headers.</summary>
    [Remedy("Send it again as plain HTTP with short headers and address."), Statuses(400, 411, 414, 417, 431)]
    public const string RequestBroken = "request-broken";

    /// <summary>A line of a batch is longer than is read; the other lines are answered.</summary>
    [Remedy("Send that question by itself, or shorten the line; 64 KiB are taken unless the service is set otherwise."), Statuses(413)]
    public const string LineTooLong = "line-too-long";

    /// <summary>The meter has no metering element of this name.</summary>
    [Remedy("Use one of the names that the sentence lists, or add the element to the machine."), Statuses(422)]
    public const string ElementNotInMeter = "element-not-in-meter";

    /// <summary>The machine has no meter at this position.</summary>
    [Remedy("Use one of the positions that the sentence lists, or add the meter to the machine."), Statuses(422)]
    public const string MeterNotOnMachine = "meter-not-on-machine";

    /// <summary>The request names a record that does not exist.</summary>
    [Remedy("Check the id, or create that record first."), Statuses(422)]
    public const string IdUnknown = "id-unknown";

    /// <summary>The id already belongs to a record that was created by another body.</summary>
    [Remedy("Use a new id, or change the existing record."), Statuses(422)]
    public const string IdTaken = "id-taken";

    /// <summary>The cursor was changed, or belongs to another list or other filters.</summary>
    [Remedy("Start again without a cursor, and follow the links of the answers as they are."), Statuses(400)]
    public const string CursorInvalid = "cursor-invalid";

    /// <summary>The time cannot be read, or lies too far in the future.</summary>
    [Remedy("Write it as in 2026-04-18T06:40:00Z or with an offset. In an address a plus sign is %2B."), Statuses(422)]
    public const string TimeWrong = "time-wrong";

    /// <summary>The record is retired and takes no new evidence.</summary>
    [Remedy("Use another record, or replace it without retired."), Statuses(422)]
    public const string RecordRetired = "record-retired";

    /// <summary>The records named do not belong together.</summary>
    [Remedy("Check the ids: the sentence says which two do not fit."), Statuses(422)]
    public const string RecordsAtOdds = "records-at-odds";

    /// <summary>A record lacks a value that the computation needs.</summary>
    [Remedy("Add the value to the record that the sentence names."), Statuses(422)]
    public const string ValueMissing = "value-missing";

    /// <summary>The record was superseded before.</summary>
    [Remedy("Refer to the record that took its place."), Statuses(422)]
    public const string AlreadySuperseded = "already-superseded";

    /// <summary>A change has to name the revision that it is for.</summary>
    [Remedy("Read the record, and send its ETag as If-Match."), Statuses(428)]
    public const string PreconditionRequired = "precondition-required";

    /// <summary>Somebody changed the record since you read it.</summary>
    [Remedy("Read it again, put your change into it, and send that with the new ETag."), Statuses(412)]
    public const string PreconditionFailed = "precondition-failed";

    /// <summary>This Idempotency-Key was used for another body in the last 24 hours.</summary>
    [Remedy("Make a new key for a new request."), Statuses(422)]
    public const string IdempotencyKeyReused = "idempotency-key-reused";

    /// <summary>The first request with this Idempotency-Key is still being worked on.</summary>
    [Remedy("Wait as long as Retry-After says, then send it again to get its answer."), Statuses(409)]
    public const string IdempotencyInFlight = "idempotency-in-flight";

    /// <summary>No key came, and this operation needs one.</summary>
    [
        Remedy(
            "Send a key in the header Authorization: Bearer, one space, and the key. The command 'keys create' of the service makes the first one."
        ),
        Statuses(401)
    ]
    public const string KeyMissing = "key-missing";

    /// <summary>What came is no whole key, or one that this service does not know.</summary>
    [Remedy("Copy the key again, whole, and check that it was made for this installation."), Statuses(401)]
    public const string KeyInvalid = "key-invalid";

    /// <summary>The key has expired, or another took its place and its time is over.</summary>
    [Remedy("Ask the administrator of the workspace for another."), Statuses(401)]
    public const string KeyExpired = "key-expired";

    /// <summary>The key was revoked.</summary>
    [Remedy("Ask the administrator of the workspace for another."), Statuses(401)]
    public const string KeyRevoked = "key-revoked";

    /// <summary>The workspace of the key is retired.</summary>
    [Remedy("Ask the operator of the service to bring it back."), Statuses(401)]
    public const string WorkspaceRetired = "workspace-retired";

    /// <summary>The key has not the scope that this operation needs.</summary>
    [Remedy("Use a key with the scope that WWW-Authenticate names."), Statuses(403)]
    public const string ScopeMissing = "scope-missing";

    /// <summary>The header Authorization cannot be read or came twice, or a key stands in the address.</summary>
    [Remedy("Send one header, Authorization: Bearer, one space, and the key. Revoke a key that stood in an address."), Statuses(400)]
    public const string CredentialsBroken = "credentials-broken";

    /// <summary>The database cannot be used right now. What was sent is not safely stored.</summary>
    [Remedy("Try again when Retry-After is over, with the same Idempotency-Key or id. If it goes on, tell the operator."), Statuses(503)]
    public const string StorageUnavailable = "storage-unavailable";

    /// <summary>The service failed. Nothing was stored.</summary>
    [Remedy("Try again. If it happens again, tell the operator the traceId."), Statuses(500)]
    public const string InternalError = "internal-error";
}
