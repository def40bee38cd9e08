using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Contract;

namespace CalibrationApi.Plumbing.Http;

/// <summary>The codes of errors: the comment of each is its cause.</summary>
internal static class ErrorCodes
{
    /// <summary>The body is not JSON, or not UTF-8.</summary>
    public static ErrorCode JsonBroken { get; } =
        new("json-broken", "Send one JSON object in UTF-8. The sentence says where reading stopped.", 400);

    /// <summary>
    /// A value is of another type than the contract says, for example a text where a number belongs. In a cell of a table it comes with
    /// 422.
    /// </summary>
    public static ErrorCode TypeWrong { get; } =
        new("type-wrong", "Send the type that the sentence names. Numbers stand without quotes and with a decimal point.", 400, 422);

    /// <summary>A member, query parameter or column of a table is unknown here; often it is misspelt. Columns come with 422.</summary>
    public static ErrorCode MemberUnknown { get; } =
        new("member-unknown", "Correct the name or leave it out. The sentence lists what is known or names the nearest.", 400, 422);

    /// <summary>A member, query parameter or column of a table is given twice. Columns come with 422.</summary>
    public static ErrorCode MemberDuplicate { get; } = new("member-duplicate", "Give it once.", 400, 422);

    /// <summary>A member that is needed is not there.</summary>
    public static ErrorCode MemberMissing { get; } = new("member-missing", "Add the member at the pointer.", 422);

    /// <summary>A number has no unit.</summary>
    public static ErrorCode UnitMissing { get; } =
        new("unit-missing", "Add a unit beside the value, for example { \"value\": 68, \"unit\": \"kg/ha\" }.", 422);

    /// <summary>The unit is not in the list of units.</summary>
    public static ErrorCode UnitUnknown { get; } =
        new("unit-unknown", "Use a symbol of GET /v1/units, written exactly so: upper and lower case count.", 422);

    /// <summary>The unit is known but measures something else than is asked here.</summary>
    public static ErrorCode UnitWrongDimension { get; } = new("unit-wrong-dimension", "Use one of the units that the sentence lists.", 422);

    /// <summary>People write this symbol for more than one unit.</summary>
    public static ErrorCode UnitAmbiguous { get; } = new("unit-ambiguous", "Write which is meant; the sentence lists them.", 422);

    /// <summary>The number is outside the range that is possible or sensible here.</summary>
    public static ErrorCode NumberOutOfRange { get; } =
        new("number-out-of-range", "Check the number and its unit. The sentence tells the range.", 422);

    /// <summary>A number in a table can be read in more than one way, because of its commas and points.</summary>
    public static ErrorCode NumberAmbiguous { get; } =
        new("number-ambiguous", "Write decimals as the sentence shows, and no thousands separators.", 422);

    /// <summary>The rows of one test do not stand together in the table.</summary>
    public static ErrorCode RowsApart { get; } = new("rows-apart", "Sort the rows by test, or give each test a name of its own.", 422);

    /// <summary>The text is longer than is kept.</summary>
    public static ErrorCode TextTooLong { get; } = new("text-too-long", "Shorten it to the length that the sentence tells.", 422);

    /// <summary>The text is blank or not of the form asked for.</summary>
    public static ErrorCode TextWrong { get; } = new("text-wrong", "Write it as the sentence says, or leave the member out.", 400, 422);

    /// <summary>The word is not in the closed list of this member or parameter.</summary>
    public static ErrorCode WordUnknown { get; } = new("word-unknown", "Use one of the words that the sentence lists.", 422);

    /// <summary>The list has too few items.</summary>
    public static ErrorCode TooFew { get; } = new("too-few", "Add items.", 422);

    /// <summary>The list has more items than one request takes.</summary>
    public static ErrorCode TooMany { get; } = new("too-many", "Split the request.", 422);

    /// <summary>The net mass is zero or below.</summary>
    public static ErrorCode NetNegative { get; } =
        new("net-negative", "Weigh again. A scale that shows a negative net mass was zeroed with a load on it.", 422);

    /// <summary>The empty container weighs as much as the full one, or more.</summary>
    public static ErrorCode TareAboveGross { get; } =
        new("tare-above-gross", "Check whether the two were swapped and whether both units are right.", 422);

    /// <summary>The meter is said not to have turned.</summary>
    public static ErrorCode RevolutionsNotPositive { get; } =
        new("revolutions-not-positive", "Give the count of the meter for this catch; without it the mass says nothing.", 422);

    /// <summary>Every catch is excluded, so nothing is left to evaluate.</summary>
    public static ErrorCode CatchesAllExcluded { get; } = new("catches-all-excluded", "Let at least one catch count.", 422);

    /// <summary>A volume can only be used together with the bulk density of the product.</summary>
    public static ErrorCode DensityMissing { get; } =
        new("density-missing", "Weigh a known volume of the product and add its bulk density.", 422);

    /// <summary>There is nothing at this address, or no record with this id.</summary>
    public static ErrorCode NotFound { get; } = new("not-found", "Check the address and the id, or look in the list.", 404);

    /// <summary>The address exists but does not take this method.</summary>
    public static ErrorCode MethodNotAllowed { get; } = new("method-not-allowed", "Use a method of the Allow header.", 405);

    /// <summary>None of the media types in Accept can be given.</summary>
    public static ErrorCode NotAcceptable { get; } =
        new("not-acceptable", "Accept application/json; lists also come as text/csv and application/x-ndjson.", 406);

    /// <summary>The body is not of a media type that is taken here.</summary>
    public static ErrorCode MediaTypeUnsupported { get; } =
        new("media-type-unsupported", "Send application/json in UTF-8 with that Content-Type.", 415);

    /// <summary>The body is larger than the service takes.</summary>
    public static ErrorCode BodyTooLarge { get; } = new("body-too-large", "Split the request.", 413);

    /// <summary>The body came too slowly, or not to its end.</summary>
    public static ErrorCode BodyTooSlow { get; } =
        new("body-too-slow", "Send it again over a better connection, or in smaller requests.", 408);

    /// <summary>The body is compressed.</summary>
    public static ErrorCode EncodingUnsupported { get; } =
        new("encoding-unsupported", "Send the body as it is, without Content-Encoding.", 415);

    /// <summary>You sent more requests than a policy of RateLimit-Policy allows; violated-policies names it.</summary>
    public static ErrorCode RateExceeded { get; } =
        new("rate-exceeded", "Wait as long as Retry-After says. RateLimit tells with every answer how much is left.", 429);

    /// <summary>The service has more to do than it can, or the request took it too long.</summary>
    public static ErrorCode ServiceBusy { get; } =
        new("service-busy", "Try again when Retry-After is over, with a smaller request if this one was large.", 503);

    /// <summary>The request is not HTTP that the service takes: too long an address, too large headers.</summary>
    public static ErrorCode RequestBroken { get; } =
        new("request-broken", "Send it again as plain HTTP with short headers and address.", 400, 411, 414, 417, 431);

    /// <summary>A line of a batch is longer than is read; the other lines are answered.</summary>
    public static ErrorCode LineTooLong { get; } =
        new(
            "line-too-long",
            "Send that question by itself, or shorten the line; 64 KiB are taken unless the service is set otherwise.",
            413
        );

    /// <summary>The meter has no metering element of this name.</summary>
    public static ErrorCode ElementNotInMeter { get; } =
        new("element-not-in-meter", "Use one of the names that the sentence lists, or add the element to the machine.", 422);

    /// <summary>The machine has no meter at this position.</summary>
    public static ErrorCode MeterNotOnMachine { get; } =
        new("meter-not-on-machine", "Use one of the positions that the sentence lists, or add the meter to the machine.", 422);

    /// <summary>The request names a record that does not exist.</summary>
    public static ErrorCode IdUnknown { get; } = new("id-unknown", "Check the id, or create that record first.", 422);

    /// <summary>The id already belongs to a record that was created by another body.</summary>
    public static ErrorCode IdTaken { get; } = new("id-taken", "Use a new id, or change the existing record.", 422);

    /// <summary>The cursor was changed, or belongs to another list or other filters.</summary>
    public static ErrorCode CursorInvalid { get; } =
        new("cursor-invalid", "Start again without a cursor, and follow the links of the answers as they are.", 400);

    /// <summary>A backup from before this cursor took the place of the database: what the cursor stands behind is there no more.</summary>
    public static ErrorCode DatabaseRestored { get; } =
        new("database-restored", "Read the list from its beginning, and make what you keep equal to it.", 410);

    /// <summary>The time cannot be read, or lies too far in the future.</summary>
    public static ErrorCode TimeWrong { get; } =
        new("time-wrong", "Write it as in 2026-04-18T06:40:00Z or with an offset. In an address a plus sign is %2B.", 422);

    /// <summary>The record is retired and takes no new evidence.</summary>
    public static ErrorCode RecordRetired { get; } = new("record-retired", "Use another record, or replace it without retired.", 422);

    /// <summary>The records named do not belong together.</summary>
    public static ErrorCode RecordsAtOdds { get; } = new("records-at-odds", "Check the ids: the sentence says which two do not fit.", 422);

    /// <summary>A record lacks a value that the computation needs.</summary>
    public static ErrorCode ValueMissing { get; } = new("value-missing", "Add the value to the record that the sentence names.", 422);

    /// <summary>The record was superseded before.</summary>
    public static ErrorCode AlreadySuperseded { get; } = new("already-superseded", "Refer to the record that took its place.", 422);

    /// <summary>A change has to name the revision that it is for.</summary>
    public static ErrorCode PreconditionRequired { get; } =
        new("precondition-required", "Read the record, and send its ETag as If-Match.", 428);

    /// <summary>Somebody changed the record since you read it.</summary>
    public static ErrorCode PreconditionFailed { get; } =
        new("precondition-failed", "Read it again, put your change into it, and send that with the new ETag.", 412);

    /// <summary>This Idempotency-Key was used for another body in the last 24 hours.</summary>
    public static ErrorCode IdempotencyKeyReused { get; } = new("idempotency-key-reused", "Make a new key for a new request.", 422);

    /// <summary>The first request with this Idempotency-Key is still being worked on.</summary>
    public static ErrorCode IdempotencyInFlight { get; } =
        new("idempotency-in-flight", "Wait as long as Retry-After says, then send it again to get its answer.", 409);

    /// <summary>The database cannot be used right now. What was sent is not safely stored.</summary>
    public static ErrorCode StorageUnavailable { get; } =
        new(
            "storage-unavailable",
            "Try again when Retry-After is over, with the same Idempotency-Key or id. If it goes on, tell the operator.",
            503
        );

    /// <summary>The service failed. Nothing was stored.</summary>
    public static ErrorCode InternalError { get; } =
        new("internal-error", "Try again. If it happens again, tell the operator the traceId.", 500);

    /// <summary>
    /// What a problem of any operation can carry: these, those of access, and the code that rules between members share with the engine.
    /// </summary>
    public static IReadOnlyList<Code> InProblems =>
        [
            .. CodesOf
                .Service()
                .Select(one => one.Code)
                .Where(code => code is ErrorCode || code == SharedCodes.SettingsAtOdds)
                .OrderBy(code => code.Word, StringComparer.Ordinal),
        ];
}
