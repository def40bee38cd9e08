using System.Reflection;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Reference.Codes;

/// <summary>
/// Every code, read from where it is declared: the comment of the constant is its cause, the attributes beside it say the rest.
/// </summary>
internal static class CodeList
{
    private static readonly Lazy<IReadOnlyList<CodeAnswer>> Read = new(() =>
        [
            .. Of(typeof(ErrorCode), "error", field => field.GetCustomAttribute<StatusesAttribute>()?.All),
            .. Of(typeof(RefusalCode), "refusal", _ => [StatusCodes.Status422UnprocessableEntity]),
            .. Of(typeof(FindingCode), "finding", _ => null),
            .. Of(typeof(CautionCode), "caution", _ => null),
            .. Of(typeof(MistakeCode), "mistake", _ => null),
        ]
    );

    /// <summary>All of them, by kind and then by name.</summary>
    public static IReadOnlyList<CodeAnswer> All => Read.Value;

    private static IEnumerable<CodeAnswer> Of(Type home, string kind, Func<FieldInfo, IReadOnlyList<int>?> statuses) =>
        home.GetFields(BindingFlags.Public | BindingFlags.Static)
            // A constant that repeats the code of another class has its meaning there.
            .Where(field => field.IsLiteral && RemedyOf(field) is not null)
            .Select(field => new CodeAnswer
            {
                Code = (string)field.GetRawConstantValue()!,
                Kind = kind,
                Statuses = statuses(field),
                Severities = field.GetCustomAttribute<SeveritiesAttribute>()?.All.Select(Words.Of).ToArray(),
                Cause = DocComments.SummaryOf(field) ?? "",
                Remedy = RemedyOf(field)!,
            })
            .OrderBy(code => code.Code, StringComparer.Ordinal);

    // What to do about a likely mistake is what an answer says beside it.
    private static string? RemedyOf(FieldInfo field) =>
        field.DeclaringType == typeof(MistakeCode)
            ? MistakeCode.CheckOf((string)field.GetRawConstantValue()!)
            : field.GetCustomAttribute<RemedyAttribute>()?.Text;
}
