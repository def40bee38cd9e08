namespace CalibrationApi.Http;

/// <summary>The stable codes of errors.</summary>
internal static class ErrorCode
{
    public const string JsonBroken = "json-broken";
    public const string TypeWrong = "type-wrong";
    public const string MemberUnknown = "member-unknown";
    public const string MemberDuplicate = "member-duplicate";
    public const string MemberMissing = "member-missing";
    public const string UnitMissing = "unit-missing";
    public const string UnitUnknown = "unit-unknown";
    public const string UnitWrongDimension = "unit-wrong-dimension";
    public const string UnitAmbiguous = "unit-ambiguous";
    public const string NumberOutOfRange = "number-out-of-range";
    public const string TextTooLong = "text-too-long";
    public const string TextWrong = "text-wrong";
    public const string WordUnknown = "word-unknown";
    public const string TooFew = "too-few";
    public const string TooMany = "too-many";
    public const string NetNegative = "net-negative";
    public const string TareAboveGross = "tare-above-gross";
    public const string RevolutionsNotPositive = "revolutions-not-positive";
    public const string CatchesAllExcluded = "catches-all-excluded";
    public const string DensityMissing = "density-missing";
    public const string SettingsAtOdds = "settings-at-odds";
    public const string NotFound = "not-found";
    public const string MethodNotAllowed = "method-not-allowed";
    public const string NotAcceptable = "not-acceptable";
    public const string MediaTypeUnsupported = "media-type-unsupported";
    public const string BodyTooLarge = "body-too-large";
    public const string BodyTooSlow = "body-too-slow";
    public const string EncodingUnsupported = "encoding-unsupported";
    public const string RateExceeded = "rate-exceeded";
    public const string ServiceBusy = "service-busy";
    public const string RequestBroken = "request-broken";
    public const string ElementNotInMeter = "element-not-in-meter";
    public const string MeterNotOnMachine = "meter-not-on-machine";
    public const string IdUnknown = "id-unknown";
    public const string IdTaken = "id-taken";
    public const string CursorInvalid = "cursor-invalid";
    public const string TimeWrong = "time-wrong";
    public const string RecordRetired = "record-retired";
    public const string RecordsAtOdds = "records-at-odds";
    public const string ValueMissing = "value-missing";
    public const string AlreadySuperseded = "already-superseded";
    public const string PreconditionRequired = "precondition-required";
    public const string PreconditionFailed = "precondition-failed";
    public const string IdempotencyKeyReused = "idempotency-key-reused";
    public const string IdempotencyInFlight = "idempotency-in-flight";
    public const string StorageUnavailable = "storage-unavailable";
    public const string InternalError = "internal-error";
}
