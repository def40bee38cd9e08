using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Reference.Codes;

/// <summary>Every code, read from where it is declared: the comment there is its cause, the code itself says the rest.</summary>
internal static class CodeList
{
    private static readonly string[] Kinds = ["error", "refusal", "finding", "caution", "mistake"];

    private static readonly Lazy<IReadOnlyList<CodeAnswer>> Read = new(() =>
        [
            .. CodesOf
                .Service()
                .Select(one => new CodeAnswer
                {
                    Code = one.Code.Word,
                    Kind = KindOf(one.Code),
                    Statuses = one.Code switch
                    {
                        ErrorCode error => error.Statuses,
                        RefusalCode => [StatusCodes.Status422UnprocessableEntity],
                        _ => null,
                    },
                    Severities = one.Code is FindingCode finding ? [.. finding.Severities.Select(Words.Of)] : null,
                    Cause = DocComments.SummaryOf(one.Place) ?? "",
                    Remedy = one.Code.Remedy,
                })
                .OrderBy(code => Array.IndexOf(Kinds, code.Kind))
                .ThenBy(code => code.Code, StringComparer.Ordinal),
        ]
    );

    /// <summary>All of them, by kind and then by name.</summary>
    public static IReadOnlyList<CodeAnswer> All => Read.Value;

    private static string KindOf(Code code) =>
        code switch
        {
            ErrorCode => "error",
            RefusalCode => "refusal",
            FindingCode => "finding",
            CautionCode => "caution",
            MistakeCode => "mistake",
            _ => throw new InvalidOperationException($"The list of codes has no kind for {code}."),
        };
}
